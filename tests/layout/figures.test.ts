import { describe, expect, it } from 'vitest';
import { takenOffRoll } from '../../src/layout';
import { leastOffRoll } from '../../src/layout/figures';
import { shapeOf } from '../../src/layout/film-shape';
import { fromMm, um } from '../../src/units';
import { runOf } from '../output/runs';

const { film: some } = runOf([]);
if (some.kind !== 'roll') throw new Error('no roll');
const roll = {
  ...some,
  jobBlank: fromMm(30),
  spanMax: fromMm(400),
  lengthLeft: fromMm(2000),
  unreached: um(0),
};
const spans = [0, 300, 600].map((from) => ({ from: fromMm(from), to: fromMm(from + 300) }));
const lengthUsed = fromMm(900);
const none = um(0);

describe('film taken off a roll', () => {
  it.each([
    ['once for a run that is one job', 'run', none, 930],
    ['for what was printed before a stop, and for the rest', 'run', fromMm(300), 960],
    ['for each span that is a job', 'span', none, 990],
  ] as const)('has the blank of the printer %s', (_, jobs, printedTo, taken) => {
    expect(takenOffRoll({ film: { ...roll, jobs }, lengthUsed, printedTo, spans })).toBe(fromMm(taken));
  });

  it('is nothing without a copy', () => {
    for (const jobs of ['run', 'span'] as const)
      expect(takenOffRoll({ film: { ...roll, jobs }, lengthUsed: none, printedTo: none, spans: [] })).toBe(0);
  });

  it('has at the least the blank of as few spans as there can be', () => {
    expect(leastOffRoll({ ...roll, jobs: 'span' }, lengthUsed, { printedTo: none })).toBe(fromMm(990));
    expect(leastOffRoll({ ...roll, jobs: 'span' }, fromMm(800), { printedTo: none })).toBe(fromMm(860));
    expect(leastOffRoll({ ...roll, jobs: 'run' }, lengthUsed, { printedTo: none })).toBe(fromMm(930));
  });

  it.each([0, 100, 430, 431, 859, 860, 900, 2000])(
    'and the blanks of its jobs are never more than is on a roll of %i mm, nor less than it must be',
    (left) => {
      for (const jobs of ['run', 'span'] as const) {
        const film = { ...roll, jobs, lengthLeft: fromMm(left) };
        const { film: shape } = shapeOf(film, { printedTo: none, spoiled: [] });
        const limit = (shape.kind === 'roll' && shape.lengthLimit) || none;
        const taken = (length: number) => leastOffRoll(film, um(length), { printedTo: none });
        expect(taken(limit)).toBeLessThanOrEqual(fromMm(left));
        expect(taken(limit + 1000)).toBeGreaterThan(fromMm(left));
      }
    },
  );
});
