import { describe, expect, it } from 'vitest';
import { editOrder, setPlaces } from '../../src/editing';
import { layRun } from '../../src/layout';
import type { Book, Id, Place, Run, Station } from '../../src/model';
import { actOf, actsOn, isDusty, startingStation, workOf } from '../../src/pressing';
import { fromMm, UPRIGHT } from '../../src/units';
import { edited, smallBook } from '../editing/book';

const { book: empty, order } = smallBook();
const [run] = Object.values(empty.run) as [Run];
const book = edited(empty, (draft) => {
  const places = Object.keys(draft.copy).map((id, index): [Id<'copy'>, Place] => [
    id as Id<'copy'>,
    { x: fromMm(5), y: fromMm(10 + 90 * index), angle: UPRIGHT, pinned: false },
  ]);
  setPlaces(draft, run.id, places);
});
const laidOf = (of: Book) => layRun(of, of.run[run.id] ?? run) ?? expect.fail();
const station = startingStation('C');
const acts = (curer: Station['curer'], of = book) => actsOn(laidOf(of), { ...station, curer });

describe('what is done to a run and can hurt', () => {
  it.each([
    ['press', ['print', 'cut-off', 'apart', 'powder', 'cure-press', 'press', 'again']],
    ['oven', ['print', 'cut-off', 'apart', 'powder', 'cure-oven', 'press', 'again']],
    ['line', ['print', 'cut-off', 'apart', 'line', 'press', 'again']],
  ] as const)('follows from where its powder is cured: %s', (curer, all) => {
    expect(acts(curer)).toEqual(all);
    // Every job of the work is among them.
    const work = workOf(laidOf(book), { ...station, curer }, new Date(0));
    if (!work.ok) throw new Error(work.problem.join());
    for (const { kind } of work.value.jobs) {
      const act = actOf(kind, curer);
      if (act !== null) expect(all).toContain(act);
    }
  });

  it('has no press for transfers that the customer presses', () => {
    const only = edited(book, (draft) => editOrder(draft, order, { wants: 'transfers' }));
    expect(acts('oven', only)).toEqual(['print', 'cut-off', 'apart', 'powder', 'cure-oven']);
  });

  it('raises dust where powder is shaken off, by hand or by a line', () => {
    expect(acts('press').filter(isDusty)).toEqual(['powder']);
    expect(acts('line').filter(isDusty)).toEqual(['line']);
  });
});
