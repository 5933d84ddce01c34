import { describe, expect, it } from 'vitest';
import { curers, peels } from '../../src/model';
import {
  pressSeconds,
  questionCure,
  questionPress,
  startingCure,
  startingPress,
  startingStation,
} from '../../src/pressing';
import { asSeconds, FABRICS, fromDegrees, fromMm, toDegrees } from '../../src/units';

const degrees = (value: Parameters<typeof toDegrees>[0]) => Math.round(toDegrees(value, 'F'));

describe('recipes to start with', () => {
  it.each([
    // Common practice, no source.
    ['cotton', 300, 330],
    ['polyester', 260, 280],
    ['nylon', 250, 275],
  ] as const)('%s is pressed between %d and %d F', (fabric, least, most) => {
    expect(degrees(startingPress('hot', fabric).temperature)).toBeGreaterThanOrEqual(least);
    expect(degrees(startingPress('hot', fabric).temperature)).toBeLessThanOrEqual(most);
  });

  it('are questioned nowhere', () => {
    for (const fabric of FABRICS) {
      for (const peel of peels)
        expect(questionPress(fabric, startingPress(peel, fabric)), fabric).toEqual([]);
    }
    for (const by of curers) expect(questionCure(by, startingCure(by)), by).toEqual([]);
  });

  it('press large transfers longer, and wait longer the colder the film is peeled', () => {
    const recipe = startingPress('hot', 'cotton');
    const seconds = (mm: number, unit: 'mm' | 'in') =>
      pressSeconds(recipe, { width: fromMm(mm), height: fromMm(20) }, startingStation('C', unit));
    const { small, large } = recipe.seconds;
    expect([89, 199.9, 200, 280].map((mm) => seconds(mm, 'mm'))).toEqual([small, small, large, large]);
    expect([200, 203.1, 203.2].map((mm) => seconds(mm, 'in'))).toEqual([small, small, large]);
    const waits = peels.map((peel) => startingPress(peel, 'cotton').wait);
    expect(waits[0]).toBe(0);
    expect(waits.toSorted((a, b) => a - b)).toEqual(waits);
  });
});

const cotton = startingPress('hot', 'cotton');
const codes = (questions: readonly { code: string }[]) => questions.map(({ code }) => code);

describe('a questioned recipe', () => {
  it('was typed in the wrong unit: 330 C is 330 F, 160 F is 160 C', () => {
    const hot = questionPress('cotton', { ...cotton, temperature: fromDegrees(330, 'C') });
    expect(hot).toEqual([{ code: 'other-unit', meant: fromDegrees(330, 'F') }]);
    const cool = questionPress('cotton', { ...cotton, temperature: fromDegrees(160, 'F') });
    expect(cool).toEqual([{ code: 'other-unit', meant: fromDegrees(160, 'C') }]);
    const cure = questionCure('press', { ...startingCure('press'), temperature: fromDegrees(315, 'C') });
    expect(cure).toEqual([{ code: 'other-unit', meant: fromDegrees(315, 'F') }]);
  });

  it.each([
    ['nylon', 320, 'scorches'],
    ['polyester', 300, 'dye-migrates'],
    ['polyester', 340, 'scorches'],
    ['leather', 320, 'scorches'],
    ['cotton', 200, 'melts-nothing'],
    ['cotton', 400, 'scorches'],
  ] as const)('%s at %d F: %s', (fabric, temperature, code) => {
    const values = { ...startingPress('hot', fabric), temperature: fromDegrees(temperature, 'F') };
    expect(codes(questionPress(fabric, values))).toEqual([code]);
  });

  it('takes times that nobody presses for', () => {
    const times = (small: number, large: number) => ({
      ...cotton,
      seconds: { small: asSeconds(small), large: asSeconds(large) },
    });
    expect(codes(questionPress('cotton', times(2, 15)))).toEqual(['too-short']);
    expect(codes(questionPress('cotton', times(12, 90)))).toEqual(['too-long']);
    expect(codes(questionPress('cotton', { ...cotton, prePress: asSeconds(60) }))).toEqual([
      'pre-press-long',
    ]);
    expect(codes(questionPress('cotton', { ...cotton, secondPress: asSeconds(60) }))).toEqual([
      'second-press-long',
    ]);
    expect(codes(questionPress('cotton', { ...cotton, wait: asSeconds(900) }))).toEqual(['wait-long']);
    const cure = startingCure('press');
    expect(codes(questionCure('press', { ...cure, seconds: asSeconds(15) }))).toEqual(['too-short']);
    expect(codes(questionCure('press', { ...cure, clear: fromMm(0) }))).toEqual(['clear-off']);
    expect(codes(questionCure('oven', { ...cure, temperature: fromDegrees(400, 'F') }))).toEqual([
      'scorches',
    ]);
  });
});
