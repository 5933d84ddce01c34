import { startingCosts } from '../../src/costing';
import { runCosts } from '../../src/costing/run';
import { addGarment, addOrder, addTransfer, applyEdit, setPlaces } from '../../src/editing';
import { layRun, placesOf, problemOf } from '../../src/layout';
import { asId, type Book, runOf, settingsOf } from '../../src/model';
import { createPlanner } from '../../src/packing';
import { orderPrice } from '../../src/pricing';
import { asMinor, fromMm } from '../../src/units';
import { context, NOW, smallBook } from '../editing/book';
import { printTable } from './table';

const ORDERS = 12;
const SIZES = [
  [89, 89],
  [250, 102],
  [57, 30],
  [120, 17],
  [203, 160],
] as const;
const COPIES = 10;
const ROUNDS = 50;

/** Twelve orders of five transfers, ten copies each, and their garments, on spans of 480 mm. */
function sixHundred(): Book {
  const ids = context();
  const { book: small } = smallBook();
  const own = { ...ids, newId: <Kind extends string>() => asId<Kind>(`bench ${ids.newId()}`) };
  const { book } = applyEdit(
    { ...small, order: {}, transfer: {}, copy: {} },
    (draft) => {
      for (const film of Object.values(draft.film)) {
        if (film.kind === 'roll') Object.assign(film, { spanMax: fromMm(480), lengthLeft: fromMm(100_000) });
      }
      for (let number = 0; number < ORDERS; number += 1) {
        const order = addOrder(draft, { name: `Order ${number}`, due: null }, own);
        for (const [width, height] of SIZES) {
          const size = { width: fromMm(width), height: fromMm(height), typed: { width: '', height: '' } };
          addTransfer(draft, order, { name: 'print', ...size, turn: 'quarter' }, COPIES, own);
        }
        const garment = { style: 'Tee', colour: 'navy', shade: null, size: 'M' };
        addGarment(draft, order, { ...garment, count: 50, price: asMinor(450) }, own);
      }
    },
    NOW,
  );
  const open = runOf(book, null);
  if (!open) throw new Error('no run');
  const problem = problemOf(book, open.run, open.film, 'pinned');
  const plan = createPlanner(problem.problem, 1).best();
  return applyEdit(book, (draft) => setPlaces(draft, open.run.id, placesOf(plan, problem, open.film)), NOW)
    .book;
}

/** How long the costs of a run of 600 copies take, from its layout to every copy's share, and the prices of its orders. */
export function benchCosts(): void {
  const book = sixHundred();
  const open = runOf(book, null);
  const laid = open && layRun(book, open.run);
  const shop = settingsOf(book);
  if (!laid || !shop) throw new Error('no run');
  const own = { ...shop, costs: startingCosts('USD') };
  const times = { costs: [] as number[], prices: [] as number[] };
  for (let round = 0; round < ROUNDS; round += 1) {
    const began = performance.now();
    const costs = runCosts(book, laid, own, () => ({ colour: 900, white: 1200 }));
    const costed = performance.now();
    for (const order of Object.values(book.order)) orderPrice(book, order, { runs: [costs] }, own);
    times.costs.push(costed - began);
    times.prices.push(performance.now() - costed);
  }
  const row = (what: string, measured: readonly number[]) => {
    const sorted = measured.toSorted((a, b) => a - b);
    const ms = (value: number | undefined) => `${(value ?? Number.NaN).toFixed(1)} ms`;
    return [what, ms(sorted[0]), ms(sorted[Math.floor(ROUNDS / 2)]), ms(sorted.at(-1))];
  };
  printTable(
    `A run of ${laid.copies.length} copies, ${ROUNDS} times`,
    ['what', 'fastest', 'median (target 20 ms)', 'slowest'],
    [
      row('costs of the run, to every copy', times.costs),
      row(`prices of its ${ORDERS} orders`, times.prices),
    ],
  );
}
