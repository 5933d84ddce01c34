import { describe, expect, it } from 'vitest';
import { lockRun, setPlaces, tickJobs } from '../../src/editing';
import { printedOn } from '../../src/log';
import { asId, type Id, type Station } from '../../src/model';
import { printKey, startingPrinter, startingStation } from '../../src/pressing';
import { fromMm, UPRIGHT } from '../../src/units';
import { edited, freshIds, smallBook } from '../editing/book';

const { book: empty } = smallBook();
const run = Object.keys(empty.run)[0] as Id<'run'>;
const own = startingStation('C');
const station: Station = { ...own, printers: [own.printers[0], startingPrinter(asId('other'))] };
const locked = edited(empty, (draft) => {
  const [copy] = Object.values(draft.copy);
  if (!copy) throw new Error('no copy');
  setPlaces(draft, run, [[copy.id, { x: fromMm(10), y: fromMm(10), angle: UPRIGHT, pinned: false }]]);
  lockRun(draft, run, freshIds());
});

describe('what a run was printed on', () => {
  it.each([
    ['the printer of its film where nothing is ticked', {}, ['printer-1']],
    ['the printer of its film where nobody says otherwise', { 0: null, 1: null }, ['printer-1']],
    ['another that all of it was ticked on', { 0: 'other', 1: 'other' }, ['other']],
    ['both where a part of it was ticked on another', { 0: 'other', 1: null }, ['other', 'printer-1']],
    ['the printer of its film where the shop has the other no more', { 0: 'gone' }, ['printer-1']],
  ] as const)('is %s', (_, on, printers) => {
    const ticked = edited(locked, (draft) => {
      for (const [span, machine] of Object.entries(on)) {
        const subject = printKey(Number(span));
        const machines = new Map(machine === null ? [] : [[subject, machine]]);
        tickJobs(draft, run, [subject], { done: true, by: 'MK', machines }, freshIds());
      }
    });
    expect(printedOn(ticked, station)(run)).toEqual(printers);
  });

  it('follows a tick that is taken back, and is that of its film for a run that is gone', () => {
    const subject = printKey(0);
    const machines = new Map([[subject, 'other']]);
    const back = edited(locked, (draft) => {
      tickJobs(draft, run, [subject], { done: true, by: '', machines }, freshIds());
      tickJobs(draft, run, [subject], { done: false, by: '' }, freshIds());
    });
    expect(printedOn(back, station)(run)).toEqual(['printer-1']);
    expect(printedOn(back, station)('none')).toEqual(['printer-1']);
  });
});
