import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { faultsOf, holds, type LaidRun, turnedTo, withCopies } from '../../src/layout';
import { turnedBy, um } from '../../src/units';
import { anyDay } from './any-day';
import { broken } from './broken';
import { playDay } from './play-day';

describe('whatever is done to a layout', () => {
  it('nothing is shown that breaks a rule, and no plan is refused', () => {
    const hands = { lay: 0, lift: 0 };
    fc.assert(
      fc.property(anyDay, (day) => {
        playDay(day, {
          see({ laid, act }) {
            expect([act, broken(laid)]).toEqual([act, []]);
            expect(faultsOf(laid).filter(({ breaks }) => breaks === 'rule')).toEqual([]);
          },
          planned({ act, wrong, sound }) {
            expect([act, wrong, sound]).toEqual([act, [], true]);
          },
          moved(may) {
            hands[may ? 'lay' : 'lift'] += 1;
          },
        });
      }),
      { numRuns: 100 },
    );
    // Hands lay copies, and are refused: else this would prove little.
    expect(Math.min(hands.lay, hands.lift)).toBeGreaterThan(10);
  });
});

describe('the check of a run', () => {
  it('finds a fault where comparing every pair finds one, and none where that finds none', () => {
    const told = { holds: 0, breaks: 0 };
    // Within a gap, and past a copy, by steps that rounded outlines tell apart.
    const away = fc.oneof(
      ...[60, 1200].map((most) => fc.integer({ min: -most, max: most }).map((steps) => 50 * steps)),
    );
    const move = fc.record({
      which: fc.nat({ max: 9 }),
      x: away,
      y: away,
      turns: fc.boolean(),
    });
    fc.assert(
      fc.property(anyDay, fc.array(move, { maxLength: 2 }), (day, moves) => {
        let shown: LaidRun | undefined;
        playDay(
          { ...day, acts: day.acts.slice(0, 3) },
          {
            see({ laid }) {
              shown = laid;
            },
          },
        );
        if (!shown) return;
        const wasCut = shown.spans !== null;
        for (const { which, x, y, turns } of moves) {
          const copy = shown.copies[which];
          if (!copy || copy.fixed) continue;
          const lies = turns ? turnedTo(copy, turnedBy(copy.angle, 90)) : copy;
          shown = withCopies(shown, [{ ...lies, x: um(copy.x + x), y: um(Math.max(0, copy.y + y)) }]);
        }
        // Film that is printed may be past parting by what is printed alone: only the app tells whether it is.
        if (wasCut && shown.spans === null && shown.copies.some(({ fixed }) => fixed)) return;
        expect(holds(shown)).toBe(broken(shown).length === 0);
        told[holds(shown) ? 'holds' : 'breaks'] += 1;
      }),
      { numRuns: 200 },
    );
    expect(Math.min(told.holds, told.breaks)).toBeGreaterThan(10);
  });
});
