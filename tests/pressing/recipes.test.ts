import { describe, expect, it } from 'vitest';
import { curers, peels } from '../../src/model';
import {
  cautionsFor,
  pressSeconds,
  questionCure,
  questionPress,
  startingCure,
  startingPress,
  startingStation,
} from '../../src/pressing';
import { asSeconds, FABRICS, type Fabric, fromDegrees, fromMm, toDegrees } from '../../src/units';

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

  it('are cooler for what nobody knows than any fabric of the list may take', () => {
    const hottest = (fabric: Fabric) =>
      Array.from({ length: 200 }, (_, at) => fromDegrees(225 + at, 'F'))
        .filter((temperature) =>
          questionPress(fabric, { ...startingPress('hot', fabric), temperature }).every(
            ({ code }) => code !== 'scorches',
          ),
        )
        .at(-1) ?? 0;
    const limits = FABRICS.map(hottest);
    expect(hottest('other')).toBe(Math.min(...limits));
    // 285 F at the most: common practice, no source.
    expect(degrees(hottest('other') as Parameters<typeof degrees>[0])).toBeLessThanOrEqual(285);
    for (const limit of limits) expect(startingPress('hot', 'other').temperature).toBeLessThanOrEqual(limit);
  });

  it.each([
    // Common practice, no source.
    ['acrylic', 255, 275, 'melts'],
    ['elastane', 260, 285, 'dye-migrates'],
    ['non-woven', 235, 260, 'melts'],
    ['shell', 250, 270, 'coated'],
    ['leather', 245, 265, 'shrinks'],
  ] as const)('%s is pressed between %d and %d F, and warned of: %s', (fabric, least, most, caution) => {
    const start = degrees(startingPress('hot', fabric).temperature);
    expect(start).toBeGreaterThanOrEqual(least);
    expect(start).toBeLessThanOrEqual(most);
    expect(cautionsFor(fabric)).toContain(caution);
  });

  it('peel cold film once it is cool to the touch: from 120 s on, later on what is thick', () => {
    for (const fabric of FABRICS)
      expect(startingPress('cold', fabric).wait, fabric).toBeGreaterThanOrEqual(120);
    expect(startingPress('cold', 'canvas').wait).toBeGreaterThan(startingPress('cold', 'cotton').wait);
  });

  it.each(['blend', 'polyester', 'elastane'] as const)(
    'ask of %s only beyond what they say its dye takes',
    (fabric) => {
      const at = (temperature: number) =>
        questionPress(fabric, { ...startingPress('hot', fabric), temperature: temperature as never });
      const asked = Array.from({ length: 900 }, (_, step) => at(1100 + step)).flatMap((questions) =>
        questions.filter(({ code }) => code === 'dye-migrates'),
      );
      const [first] = asked;
      if (first?.code !== 'dye-migrates') throw new Error('never asked');
      expect(startingPress('hot', fabric).temperature).toBeLessThanOrEqual(first.most);
      expect(at(first.most)).toEqual([]);
      expect(at(first.most + 1)).toEqual([first]);
    },
  );

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
