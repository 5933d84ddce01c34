import { describe, expect, it } from 'vitest';
import { startingCosts, startingRates } from '../../../src/costing';
import {
  changesFor,
  type Finding,
  findRates,
  presentRate,
  type Rate,
} from '../../../src/costing/calibration';
import { calibrate, isInForce, leaveRunOut, takeBackCalibration } from '../../../src/editing';
import type { Book, Closing, Driver, Quantity, Settings } from '../../../src/model';
import { startingStation } from '../../../src/pressing';
import type { Milligrams } from '../../../src/units';
import { context, edited, LATER, smallBook } from '../../editing/book';
import { closedRuns, type Truth, truth } from './closings';

const find = (closings: Record<string, Closing>, quantity: Quantity, more: Partial<Book> = {}) =>
  findRates(
    Object.values(closings),
    quantity,
    Object.values(more.leftOut ?? {}),
    Object.values(more.calibration ?? {}),
  );

const rateOf = (finding: Finding, driver: Driver): Rate => {
  const rate = finding.rates.find((each) => each.driver === driver);
  if (!rate) throw new Error(`no rate for ${driver}`);
  return rate;
};

const settings = { rates: startingRates.mm, station: startingStation('C'), costs: startingCosts('USD') };

describe('the rates of a shop', () => {
  const closings = closedRuns(24, truth);

  it.each<[Quantity, Driver, number]>([
    ['colour', 'area', 11],
    ['colour', 'run', 3],
    ['white', 'area', 16.5],
    ['white', 'run', 3],
    ['powder', 'area', 118],
    ['printer', 'length', 1500],
    ['printer', 'run', 500],
    ['hands', 'span', 240],
    ['hands', 'copy', 40],
    ['hands', 'pressed', 60],
  ])('are found from its closed runs: %s for each %s', (quantity, driver, real) => {
    const { value, low, high } = rateOf(find(closings, quantity), driver);
    expect(low).toBeLessThan(real);
    expect(high).toBeGreaterThan(real);
    expect(Math.abs(value / real - 1)).toBeLessThan(0.15);
  });

  it('are told from six runs on with one rate, from seven with two', () => {
    const five = find(closedRuns(5, truth), 'powder');
    expect(five).toMatchObject({ missing: 1, rates: [] });
    expect(find(closedRuns(6, truth), 'powder').rates).toHaveLength(1);
    const six = find(closedRuns(6, truth), 'colour');
    expect(six.rates.map(({ driver }) => driver)).toEqual(['area']);
    expect(six.apart).toEqual({ drivers: ['run'], reason: 'few' });
    expect(find(closedRuns(7, truth), 'colour').rates).toHaveLength(2);
  });

  it('are not told from a log with one run, or none', () => {
    expect(find(closedRuns(1, truth), 'colour')).toMatchObject({ missing: 5, rates: [] });
    expect(find({}, 'hands')).toMatchObject({ missing: 6, rates: [], points: [] });
  });

  it('are not offered while their interval is wider than half of them', () => {
    const loose: Truth = { ...truth, noise: 0.6 };
    const { verdict, low, high, value } = rateOf(find(closedRuns(10, loose), 'powder'), 'area');
    expect((high - low) / value).toBeGreaterThan(0.5);
    expect(verdict).toMatchObject({ kind: 'loose' });
    expect(rateOf(find(closings, 'powder'), 'area').verdict).toEqual({ kind: 'told' });
  });

  it('say when drivers go up and down together, and tell what can be told', () => {
    const together = find(closedRuns(24, { ...truth, allPressed: true }), 'hands');
    expect(together.apart).toEqual({ drivers: ['pressed'], reason: 'alike' });
    expect(together.rates.map(({ driver }) => driver)).toEqual(['span', 'copy']);
    // Every run the same, but for how it scatters: only how far off the plan was.
    const [first] = Object.values(closedRuns(1, truth));
    const same = Object.fromEntries(
      Object.entries(closings).map(([id, run]) => [id, { ...run, work: first?.work ?? run.work }]),
    );
    expect(find(same, 'hands').rates.map(({ driver }) => driver)).toEqual(['plan']);
    expect(find(same, 'colour')).toMatchObject({ apart: { drivers: ['run'], reason: 'alike' } });
  });

  it('do not come from runs that were closed with the figures of the plan', () => {
    const unmeasured = Object.fromEntries(
      Object.entries(closings).map(([id, run]) => [id, { ...run, actual: run.planned }]),
    );
    const finding = find(unmeasured, 'colour');
    expect(finding.points).toEqual([]);
    expect(finding.untold).toEqual(new Map([['as-planned', 24]]));
  });

  it('count each run that tells nothing, with the reason', () => {
    const runs = Object.values(closedRuns(8, truth));
    const [a, b, ...rest] = runs;
    if (!a || !b) throw new Error('runs are missing');
    const none: Closing = { ...a, actual: { ...a.actual, colour: null } };
    const unseen: Closing = { ...b, work: { ...b.work, coverage: null } };
    const finding = findRates([none, unseen, ...rest], 'colour', [], []);
    expect(finding.points).toHaveLength(6);
    expect(finding.untold).toEqual(
      new Map([
        ['not-measured', 1],
        ['no-artwork', 1],
      ]),
    );
  });

  it('name a run that does not fit, keep it in, and leave it out when the shop says so', () => {
    const wrong = closings['run-3'];
    if (!wrong) throw new Error('the run is missing');
    const powder = (10 * (wrong.actual.powder ?? 0)) as Milligrams;
    const slip = { ...closings, 'run-3': { ...wrong, actual: { ...wrong.actual, powder } } };
    const all = find(slip, 'powder');
    expect(all.points.filter(({ isMisfit }) => isMisfit).map(({ run }) => run)).toEqual(['run-3']);
    expect(Math.abs(rateOf(all, 'area').value / 118 - 1)).toBeGreaterThan(0.03);
    const book = edited(smallBook().book, (draft) => leaveRunOut(draft, 'powder', wrong.id, true, context()));
    const without = find(slip, 'powder', book);
    expect(without.points.find(({ run }) => run === 'run-3')?.isLeftOut).toBe(true);
    expect(Math.abs(rateOf(without, 'area').value / 118 - 1)).toBeLessThan(0.02);
    // It is left out of powder alone, and comes back.
    expect(find(closings, 'colour', book).points.some(({ isLeftOut }) => isLeftOut)).toBe(false);
    const again = edited(book, (draft) => leaveRunOut(draft, 'powder', wrong.id, false, context()));
    expect(again.leftOut).toEqual({});
  });
});

describe('a change to what runs tell', () => {
  const { book } = smallBook();
  const shop = book.settings.shop as Settings;
  const closings = closedRuns(24, truth);

  const change = (before: Book, quantity: Quantity, driver: Driver): Book => {
    const finding = find(closings, quantity, before);
    const rate = rateOf(finding, driver);
    const now = before.settings.shop as Settings;
    const set = changesFor(finding, rate, now, closings);
    const { value, low, high } = rate;
    return edited(before, (draft) =>
      calibrate(
        draft,
        { quantity, driver, printer: null, found: { value, low, high }, runs: 24, set },
        context(LATER),
      ),
    );
  };

  it('sets the rate, is kept with what was before, and can be taken back', () => {
    const changed = change(book, 'white', 'area');
    const now = changed.settings.shop as Settings;
    expect(Math.abs(now.rates.white / 16_500 - 1)).toBeLessThan(0.05);
    expect(now.rates.colour).toBe(shop.rates.colour);
    const [kept] = Object.values(changed.calibration);
    if (!kept) throw new Error('nothing was kept');
    expect(kept.set).toEqual([{ setting: 'rates.white', before: 14_000, after: now.rates.white }]);
    expect(isInForce(kept, now)).toBe(true);
    const back = edited(changed, (draft) => takeBackCalibration(draft, kept.id, context(LATER)));
    expect(back.settings.shop?.rates).toEqual(shop.rates);
    expect(back.calibration[kept.id]?.takenBack).toBe(LATER);
  });

  it('is not taken back over what was set since', () => {
    const changed = change(book, 'colour', 'area');
    const [kept] = Object.values(changed.calibration);
    const byHand = edited(changed, (draft) => {
      if (draft.settings.shop) draft.settings.shop.rates.colour = 12_345 as never;
    });
    const after = edited(byHand, (draft) => takeBackCalibration(draft, kept?.id ?? '', context()));
    expect(after).toEqual(byHand);
  });

  it('turns seconds for a metre into film in an hour, and the start of a run into the warm-up', () => {
    const printer = change(change(book, 'printer', 'length'), 'printer', 'run').settings.shop?.station
      .printers[0];
    // 3600 s / 1500 s a metre, and 500 s less the two minutes of the nozzle check.
    expect((printer?.perHour ?? 0) / 2_400_000).toBeCloseTo(1, 1);
    expect(Math.abs((printer?.warmUp ?? 0) - 380)).toBeLessThan(60);
    expect(printer?.check).toBe(120);
    const finding = find(closings, 'printer');
    expect(presentRate(finding, rateOf(finding, 'length'), settings)).toBe(1440);
    expect(presentRate(finding, rateOf(finding, 'run'), settings)).toBe(360);
  });

  it('has the times of a span take up all that spans took beyond the plan', () => {
    const { handling } = change(book, 'hands', 'span').settings.shop?.station ?? startingStation('C');
    // Planned 145 s a span, measured 240 s: 95 s, of which 12% are rest, on the 145 s that 30 s + 75 s + 2 x 20 s are.
    expect(handling.cutOff + handling.powder + 2 * handling.load).toBeGreaterThan(215);
    expect(handling.cutOff + handling.powder + 2 * handling.load).toBeLessThan(250);
    expect(handling.dress).toBe(15);
  });

  it('has all times of the hands take part where only the whole can be told', () => {
    const [first] = Object.values(closings);
    const same = Object.fromEntries(
      Object.entries(closings).map(([id, run]) => [id, { ...run, work: first?.work ?? run.work }]),
    );
    const finding = find(same, 'hands');
    const rate = rateOf(finding, 'plan');
    const set = changesFor(finding, rate, shop, same);
    expect(set.map(({ setting }) => setting)).toEqual(
      ['cutOff', 'powder', 'load', 'cutApart', 'dress', 'place', 'pack'].map((name) => `handling.${name}`),
    );
    expect(set.every(({ before, after }) => after > before === rate.value > 1)).toBe(true);
  });

  it('tells hands from runs planned with the times of now alone', () => {
    const changed = change(book, 'hands', 'span');
    const later = find(closings, 'hands', changed);
    expect(later.untold).toEqual(new Map([['other-times', 24]]));
    const [kept] = Object.values(changed.calibration);
    const back = edited(changed, (draft) => takeBackCalibration(draft, kept?.id ?? '', context(LATER)));
    expect(find(closings, 'hands', back).points).toHaveLength(24);
  });

  it('makes of the ink that each run takes what its cleanings do not, and can be taken back', () => {
    const finding = find(closings, 'white');
    const rate = rateOf(finding, 'run');
    // A cleaning of 3 ml, half of it white: the start has none of its own yet.
    expect(presentRate(finding, rate, settings)).toBe(1.5);
    const changed = change(book, 'white', 'run');
    const { start } = changed.settings.shop?.costs.maintenance ?? { start: null };
    // 3 ml a run, less those 1.5 ml.
    expect((start?.white ?? 0) / 1000).toBeCloseTo(rate.value - 1.5, 2);
    expect(Math.abs((start?.white ?? 0) - 1500)).toBeLessThan(900);
    expect(start?.colour).toBe(0);
    expect(presentRate(finding, rate, changed.settings.shop as Settings)).toBeCloseTo(rate.value, 3);
    const [kept] = Object.values(changed.calibration);
    const back = edited(changed, (draft) => takeBackCalibration(draft, kept?.id ?? '', context(LATER)));
    expect(back.settings.shop?.costs).toEqual(book.settings.shop?.costs);
  });

  it('sets no ink below nothing: cleanings that take more than was found are the shop’s to lower', () => {
    const finding = find(closings, 'colour');
    const rate = rateOf(finding, 'run');
    const { maintenance } = shop.costs;
    const dear = { ...shop.costs, maintenance: { ...maintenance, cleanings: 9 } };
    expect(changesFor(finding, rate, { ...shop, costs: dear }, closings)).toEqual([]);
  });
});
