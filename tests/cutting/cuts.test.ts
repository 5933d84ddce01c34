import { describe, expect, it } from 'vitest';
import {
  acrossMap,
  copiesByStretch,
  copiesWithin,
  knifeCuts,
  runSpans,
  stretches,
  tallyByTransfer,
} from '../../src/cutting';
import { fromMm } from '../../src/units';
import { longRun, runOf } from '../output/runs';

describe('cuts', () => {
  const run = longRun(12);

  it('are told from the cut before, and add up to the run', () => {
    const cuts = knifeCuts(run);
    expect(cuts.reduce((sum, { fromPrevious }) => sum + fromPrevious, 0)).toBe(run.lengthUsed);
    expect(cuts.at(-1)).toMatchObject({ kind: 'off', line: run.lengthUsed, fromStart: run.lengthUsed });
    expect(cuts.slice(0, -1).every(({ kind }) => kind === 'between')).toBe(true);
  });

  it('part the copies so that each is in one span', () => {
    const counts = runSpans(run).map((span) => copiesWithin(run.copies, span).length);
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(36);
  });

  it('are none where nothing lies on the film', () => {
    expect(knifeCuts(runOf([]))).toEqual([]);
  });
});

describe('the stretches that pages show', () => {
  const room = { most: fromMm(1500), strip: fromMm(40), cuts: 18 };

  it.each([
    ['cut', longRun(50)],
    ['uncut', longRun(50, null)],
  ])('cover a run that is %s without a hole and list every copy once', (_, run) => {
    const pages = stretches(run, room);
    expect(pages[0]?.from).toBe(0);
    expect(pages.at(-1)?.to).toBe(run.lengthUsed);
    pages.forEach((page, index) => {
      expect(page.to - page.from).toBeLessThanOrEqual(room.most);
      const before = pages[index - 1];
      if (before) expect(page.from).toBeLessThanOrEqual(before.to);
    });
    const lists = copiesByStretch(run.copies, pages);
    expect(lists.flat().length).toBe(run.copies.length);
    expect(new Set(lists.flat().map(({ id }) => id)).size).toBe(run.copies.length);
  });
});

describe('the tally', () => {
  it('counts each transfer, turned or not, and tells its upright size', () => {
    const run = runOf([
      { code: 'HB', number: 1, x: 5, y: 10, width: 80, length: 50 },
      { code: 'HB', number: 2, x: 95, y: 10, width: 50, length: 80, turned: true },
      { code: 'AA', number: 1, x: 205, y: 10, width: 30, length: 30 },
    ]);
    expect(tallyByTransfer(run.copies)).toMatchObject([
      { order: { code: 'AA' }, numbers: [1] },
      { order: { code: 'HB' }, numbers: [1, 2], size: { width: fromMm(80), height: fromMm(50) } },
    ]);
  });
});

describe('the view of a map', () => {
  it('mirrors across the film ink up, and not as seen on screen', () => {
    const box = { x: 10, width: 30 };
    expect(acrossMap(false, 100, box)).toBe(10);
    expect(acrossMap(true, 100, box)).toBe(60);
  });
});
