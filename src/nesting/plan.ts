import { um } from '../units';
import type { Tight } from './compact';
import type { OutlinePlaced, OutlinePlan } from './problem';
import type { Shape } from './shape';
import type { Stock } from './stock';

/** A layout in the terms of the film. */
export function planOf({ all, growth, bins: film, lines }: Stock, { bins, reach }: Tight): OutlinePlan {
  const placed: OutlinePlaced[] = [];
  const spans: { from: number; to: number }[] = [];
  let start = film.lead;
  let knife = 0;
  bins.forEach((laid, bin) => {
    for (const { shape, x, y } of laid) {
      const { piece, rotation } = all[shape] as Shape;
      const sheet = film.kind === 'sheet' ? bin : 0;
      placed.push({ piece, sheet, x: um(x + growth), y: um(start + y), rotation });
    }
    if (film.kind === 'sheet') return;
    const end = start + Math.ceil(reach[bin] as number);
    for (const line of bin === 0 ? lines : []) {
      if (line >= end) break;
      spans.push({ from: knife, to: line });
      knife = line;
    }
    const isLast = bin === bins.length - 1;
    const to = isLast ? end + film.tail : end + film.beforeKnife;
    spans.push({ from: knife, to });
    knife = to;
    start = end + film.between;
  });
  if (film.kind === 'sheet') return { placed, used: { kind: 'sheets', sheets: bins.length } };
  const length = bins.length === 0 ? 0 : knife;
  return {
    placed,
    used: {
      kind: 'roll',
      length: um(length),
      spans: film.isCut ? spans.map(({ from, to }) => ({ from: um(from), to: um(to) })) : [],
    },
  };
}
