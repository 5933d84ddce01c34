import type { CostKind, CostSheet } from '../costing';
import type { Alternative, RunUse } from '../model';
import { asMinor, type Minor } from '../units';

/** A cost that grows with the count: `fixed + count x each`, in minor units before rounding. */
export interface Linear {
  readonly fixed: number;
  readonly each: number;
}

export const at = ({ fixed, each }: Linear, count: number): number => fixed + count * each;

/** From which count on, or up to which, making costs no more than buying. */
export type BreakEven =
  | { readonly kind: 'always' }
  | { readonly kind: 'never' }
  | { readonly kind: 'from'; readonly count: number }
  | { readonly kind: 'up-to'; readonly count: number };

/** No shop makes more of a thing. */
const MOST = 1e9;

/**
 * The count at which making pays: fixed costs over the difference per piece (break-even in units, OpenStax, Principles of
 * Accounting 2, chapter 3), then the whole count at which it is true and its neighbour is not.
 */
export function breakEven(make: Linear, buy: Linear): BreakEven {
  const pays = (count: number) => at(make, count) <= at(buy, count);
  const saved = buy.each - make.each;
  const crossing = (make.fixed - buy.fixed) / saved;
  if (saved === 0 || Math.abs(crossing) > MOST) return { kind: pays(1) ? 'always' : 'never' };
  if (saved > 0) {
    let count = Math.max(1, Math.ceil(crossing));
    while (count > 1 && pays(count - 1)) count -= 1;
    while (!pays(count)) count += 1;
    return count === 1 ? { kind: 'always' } : { kind: 'from', count };
  }
  let count = Math.max(0, Math.floor(crossing));
  while (count > 0 && !pays(count)) count -= 1;
  while (pays(count + 1)) count += 1;
  return count === 0 ? { kind: 'never' } : { kind: 'up-to', count };
}

/** Costs that a bought-in transfer spares: all up to the press. */
const sparedByTransfers: ReadonlySet<CostKind> = new Set([
  'film',
  'colour-ink',
  'white-ink',
  'powder',
  'maintenance',
  'printer-power',
  'oven-power',
  'artwork',
  'printing',
  'cutting',
]);

/** A garment that comes decorated spares the press as well. */
const sparedByDecoration: ReadonlySet<CostKind> = new Set([...sparedByTransfers, 'press-power', 'pressing']);

/** What is spared in full costs, beside it, the same share of what is allowed for spoilage and overhead. */
const inProportion: ReadonlySet<CostKind> = new Set(['spoilage', 'overhead']);

/** The same prints made and bought, at the run's count and at any other. */
export interface MakeOrBuy {
  readonly make: Linear;
  readonly buy: Linear;
  readonly count: number;
  /** At the run's count. */
  readonly made: Minor;
  readonly bought: Minor;
  readonly breakEven: BreakEven;
  /** What of the run the alternative spares. */
  readonly spared: readonly CostKind[];
}

/** What making the run's prints costs: what the alternative would spare, by what is fixed and what each copy adds. */
function makeOf({ lines }: CostSheet, kinds: ReadonlySet<CostKind>, count: number): Linear {
  const direct = lines.filter(({ kind }) => !inProportion.has(kind));
  const all = direct.reduce((sum, { exact }) => sum + exact, 0);
  const own = direct.filter(({ kind }) => kinds.has(kind));
  const exact = own.reduce((sum, line) => sum + line.exact, 0);
  const fixed = own.reduce((sum, line) => sum + line.fixed, 0);
  const beside = lines
    .filter(({ kind }) => inProportion.has(kind))
    .reduce((sum, line) => sum + line.exact, 0);
  const grown = all > 0 ? 1 + beside / all : 1;
  return { fixed: fixed * grown, each: count > 0 ? ((exact - fixed) * grown) / count : 0 };
}

/** Film of the alternative's width that so much area of this run's film comes to, for each copy. */
function buyOf(
  alternative: Alternative,
  use: RunUse,
  filmWidth: number,
  filmLength: number,
  count: number,
): Linear {
  const { shipping } = alternative;
  switch (alternative.kind) {
    case 'piece':
      return { fixed: shipping, each: alternative.price };
    case 'length': {
      const length = (filmLength * filmWidth) / alternative.width / Math.max(1, count);
      return { fixed: shipping, each: (length * alternative.price.amount) / alternative.price.per };
    }
    case 'decorated': {
      // A design at another size is set up anew.
      const designs = use.transfers.length;
      return { fixed: shipping + designs * alternative.colours * alternative.setUp, each: alternative.price };
    }
  }
}

/**
 * Compares making a run with buying its prints. Count stands for more or fewer of the same mix of copies.
 * @param film the run's film: its width, and the length it takes
 */
export function makeOrBuy(
  sheet: CostSheet,
  use: RunUse,
  film: { readonly width: number; readonly length: number },
  alternative: Alternative,
): MakeOrBuy {
  const count = use.transfers.reduce((sum, { copies }) => sum + copies, 0);
  const spared = alternative.kind === 'decorated' ? sparedByDecoration : sparedByTransfers;
  const make = makeOf(sheet, spared, count);
  const buy = buyOf(alternative, use, film.width, film.length, count);
  return {
    make,
    buy,
    count,
    made: asMinor(at(make, count)),
    bought: asMinor(at(buy, count)),
    breakEven: breakEven(make, buy),
    spared: sheet.lines.flatMap(({ kind }) => (spared.has(kind) ? [kind] : [])),
  };
}
