/** `npx tsx tests/bench/demo-layout.ts`: prints the demo day's first layout, in both units, as `src/demo/first-layout.ts` keeps it. */
import { copiesByTransfer } from '../../src/model';
import { QUARTER } from '../../src/units';
import { demoShop, laidByEngine } from '../demo/shop';

for (const unit of ['mm', 'in'] as const) {
  const { book, places } = laidByEngine(demoShop(unit));
  const told = new Map(
    places.map(([id, place]) => [id, place && `${place.x},${place.y}${place.angle === QUARTER ? 't' : ''}`]),
  );
  const copies = copiesByTransfer(book);
  const lines = Object.keys(book.transfer).map(
    (id) => `    '${(copies.get(id) ?? []).map((copy) => told.get(copy.id)).join(' ')}',`,
  );
  console.log(`  ${unit}: [\n${lines.join('\n')}\n  ],`);
}
