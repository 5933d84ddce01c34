import { describe, expect, it } from 'vitest';
import { directionOf, handleOf, hasHandle, meantAngle, middleOf } from '../../app/film/canvas/turning';
import { turnedInPlace, turnedTo } from '../../src/layout';
import { angleOf, degreesOf, type Turning, um } from '../../src/units';
import { runOf } from '../output/runs';

const [copy] = runOf([{ code: 'A', number: 1, x: 100, y: 200, width: 60, length: 40 }]).copies;
if (!copy) throw new Error('no copy');
const film = { width: 330_000 };
const scale = 0.002;

describe('a copy that is turned by hand', () => {
  it.each([0, 30, 90, 135, 200, 270, 359])('at %i degrees has its handle above its image', (degrees) => {
    const lying = turnedInPlace(copy, angleOf(degrees));
    const handle = handleOf(lying, scale, film);
    // Micrometres are whole.
    expect(directionOf(middleOf(lying), handle)).toBeCloseTo(degrees > 180 ? degrees - 360 : degrees, 2);
    expect(middleOf(lying).x).toBeCloseTo(middleOf(copy).x, -1);
    expect(middleOf(lying).y).toBeCloseTo(middleOf(copy).y, -1);
  });

  it('has its handle below where there is no film above', () => {
    const first = turnedTo({ ...copy, y: copy.x }, angleOf(0));
    const near = { ...first, y: um(10_000) };
    expect(handleOf(near, scale, film).y).toBeGreaterThan(middleOf(near).y);
  });

  it.each<[number, Turning, number]>([
    [33.4, 'any', 33],
    [28.2, 'any', 30],
    [-16, 'any', 345],
    [359.7, 'any', 0],
    [50, 'quarter', 90],
    [-50, 'quarter', 270],
    [80, 'half', 0],
    [100, 'half', 180],
  ])('held at %f degrees, where it may turn %s, means %i', (held, turning, meant) => {
    expect(degreesOf(meantAngle(held, turning))).toBe(meant);
  });

  it('has a handle where it may turn, lies alone in the hand and is not printed', () => {
    const fixed = { ...copy, fixed: true };
    const still = { ...copy, transfer: { ...copy.transfer, turn: 'fixed' as const } };
    expect([[copy], [copy, copy], [fixed], [still], []].map(hasHandle)).toEqual([
      true,
      false,
      false,
      false,
      false,
    ]);
  });
});
