import { describe, expect, it } from 'vitest';
import { filmSteps, filmTick, shareSteps, timeSteps } from '../../app/log/ticks';
import { spoken, wholePercent } from '../../app/words/format';

const inches = { unit: 'in', currency: 'USD', locale: 'en-US' } as const;
const metric = { unit: 'mm', currency: 'EUR', locale: 'es' } as const;

/** The figures beside an axis whose marks lie a step apart. */
const marks = (step: number, tick: (value: number) => string) =>
  Array.from({ length: 12 }, (_, mark) => tick(mark * step));

describe('the marks of an axis', () => {
  it.each([
    [inches, 'ft'],
    [metric, 'm'],
  ] as const)('of film are round in the unit that is shown', (ways, unit) => {
    for (const step of filmSteps(ways)) {
      const said = marks(step, (value) => filmTick(value, ways));
      const figures = said.map((text) =>
        Number(
          text
            .replace(` ${unit}`, '')
            .replace(/[.,](?=\d{3})/g, '')
            .replace(',', '.'),
        ),
      );
      const first = figures[1] ?? 0;
      expect(['1', '2', '5']).toContain(String(first).replace(/[0.]/g, ''));
      for (const [mark, figure] of figures.entries()) expect(figure).toBeCloseTo(mark * first, 6);
    }
  });

  it('of film say feet without a nought behind them', () => {
    const five = filmSteps(inches)[5] ?? 0;
    expect(marks(five, (value) => filmTick(value, inches)).slice(0, 4)).toEqual([
      '0 ft',
      '5 ft',
      '10 ft',
      '15 ft',
    ]);
  });

  it('of time are whole minutes, of shares whole per cents', () => {
    for (const step of timeSteps) expect(spoken(step, inches)).not.toMatch(/\ds$| s/);
    for (const step of shareSteps)
      expect(new Set(marks(step, (value) => wholePercent(value, inches))).size).toBe(12);
  });
});
