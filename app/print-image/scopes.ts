import { useMemo } from 'react';
import type { LaidRun } from '../../src/layout';
import { isPrinted } from '../../src/model';
import { framesBySpan, type Scope } from '../../src/output/print-image';
import { useWays } from '../store/selectors';
import { useView } from '../store/view';
import { useAllWords } from '../words';

interface ScopeChoice {
  readonly scope: Scope;
  readonly label: string;
}

/** The scopes that a run offers, by a key that a list can hold; `run` is always among them. */
export function useScopes(run: LaidRun): ReadonlyMap<string, ScopeChoice> {
  const { whats: words } = useAllWords().printImage;
  const ways = useWays();
  const selected = useView((view) => view.selected);
  return useMemo(() => {
    const spans = framesBySpan(run);
    const chosen = run.copies.filter(({ id }) => selected.has(id)).length;
    const onSheets = run.film.kind === 'sheets';
    const isRest = !isPrinted(run) && run.printedTo > 0;
    const scopes = new Map<string, ScopeChoice>();
    const whole = isRest ? words.rest : words.run;
    scopes.set('run', { scope: { kind: 'run' }, label: onSheets ? words.sheets(spans.length, ways) : whole });
    if (chosen > 0) {
      const scope = { kind: 'chosen', copies: selected } as const;
      scopes.set('chosen', { scope, label: words.chosen(chosen, ways) });
    }
    if (spans.length < 2) return scopes;
    if (!onSheets) scopes.set('spans', { scope: { kind: 'spans' }, label: words.spans(spans.length, ways) });
    for (const { part } of spans) {
      if (!('number' in part)) continue;
      const { kind, number } = part;
      scopes.set(String(number), { scope: { kind: 'span', number }, label: words[kind](number) });
    }
    return scopes;
  }, [run, selected, ways, words]);
}
