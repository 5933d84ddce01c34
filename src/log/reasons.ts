import type { Spoilage, Stage } from '../model';

/** Why copies were spoiled before, as it was typed first, capitals aside: reasons of a stage first, the most frequent before others. */
export function reasonsBefore(spoilages: readonly Spoilage[], stage: Stage): string[] {
  const reasons = new Map<string, { readonly text: string; times: number; here: number }>();
  for (const { reason, stage: at } of spoilages) {
    const text = reason.trim();
    const key = text.toLocaleLowerCase();
    const known = reasons.get(key) ?? { text, times: 0, here: 0 };
    known.times += 1;
    if (at === stage) known.here += 1;
    if (text !== '') reasons.set(key, known);
  }
  return [...reasons.values()].sort((a, b) => b.here - a.here || b.times - a.times).map(({ text }) => text);
}
