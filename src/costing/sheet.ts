import type { Costs, Id, Rates, RunUse } from '../model';
import { asMinor, groupBy, inOrder, type Minor, sum } from '../units';
import { apportion, apportionLines } from './apportion';
import { type Formula, worthOf } from './formula';
import { type CostKind, costLines, type Gap, partsOf, type SharedBy } from './lines';

/** A line of the run's sheet: an amount, and how it was come by. */
export interface CostLine {
  readonly kind: CostKind;
  readonly amount: Minor;
  /** Before rounding. */
  readonly exact: number;
  /** Of it what would be the same for any number of copies. */
  readonly fixed: number;
  readonly formula: Formula;
  readonly sharedBy: SharedBy;
  readonly gap: Gap | null;
}

/** A part of a run's cost: what it comes to, and what of each line of the sheet; `exact` is before rounding. */
export interface CostShare {
  readonly amount: Minor;
  readonly lines: readonly Minor[];
  readonly exact: readonly number[];
}

export interface TransferCost extends CostShare {
  readonly id: Id<'transfer'>;
  /** How many copies it has on the run; what each comes to is told by {@link copyCosts}. */
  readonly count: number;
}

export interface OrderCost extends CostShare {
  readonly id: Id<'order'>;
  readonly transfers: readonly TransferCost[];
}

/** What a run costs. Lines sum to the amount, and at every level the parts sum to it, line by line. */
export interface CostSheet {
  readonly amount: Minor;
  readonly lines: readonly CostLine[];
  readonly orders: readonly OrderCost[];
}

/** Shares whole units of lines among rows that know what they are before rounding. */
function shared<Row>(
  lines: readonly Minor[],
  rows: readonly { readonly row: Row; readonly exact: readonly number[] }[],
): (CostShare & { readonly row: Row })[] {
  const cells = apportionLines(
    lines,
    rows.map(({ exact }) => exact),
  );
  return rows.map(({ row, exact }, at) => {
    const own = cells[at] ?? [];
    return { row, exact, lines: own, amount: asMinor(sum(own)) };
  });
}

const byId = (a: { id: string }, b: { id: string }): number => inOrder(a.id, b.id);

/**
 * The cost sheet of a run. The total is rounded once; lines, orders, transfers and copies sum to it exactly.
 * @param closed what was spoiled is known: nothing is allowed for it
 */
export function costSheet(found: RunUse, costs: Costs, rates: Rates, closed = false): CostSheet {
  const use = { ...found, transfers: [...found.transfers].sort(byId), orders: [...found.orders].sort(byId) };
  if (use.transfers.length === 0) return { amount: asMinor(0), lines: [], orders: [] };
  const lines = costLines(use, costs, rates, closed);
  const exact = lines.map(({ formula }) => worthOf(formula));
  const amount = asMinor(sum(exact));
  const amounts = apportion(amount, exact);
  const parts = lines.map((line) => partsOf(line, use));
  const transfers = use.transfers.map((row, at) => ({ row, exact: parts.map((own) => own[at] ?? 0) }));
  const orders = [...groupBy(transfers, ({ row }) => row.order)]
    .sort(([a], [b]) => inOrder(a, b))
    .map(([id, own]) => ({
      row: { id, own },
      exact: lines.map((_, line) => sum(own.map((each) => each.exact[line] ?? 0))),
    }));
  return {
    amount,
    lines: lines.map(({ kind, formula, fixed, sharedBy, gap }, at) => ({
      kind,
      amount: amounts[at] as Minor,
      exact: exact[at] ?? 0,
      fixed: worthOf(fixed),
      formula,
      sharedBy,
      gap,
    })),
    orders: shared(amounts, orders).map(({ row, ...order }) => ({
      id: row.id,
      ...order,
      transfers: shared(order.lines, row.own).map(({ row: transfer, ...own }) => ({
        id: transfer.id,
        ...own,
        count: transfer.copies,
      })),
    })),
  };
}

/** What each copy of a transfer comes to: all alike before rounding, and they sum to it line by line. */
export function copyCosts({ lines, exact, count }: TransferCost): CostShare[] {
  const each = exact.map((value) => value / Math.max(1, count));
  const rows = Array.from({ length: count }, () => ({ row: null, exact: each }));
  return shared(lines, rows).map(({ row: _, ...copy }) => copy);
}
