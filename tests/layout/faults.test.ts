import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { faultsOf, holds, type LaidCopy, type LaidRun, withCopies } from '../../src/layout';
import { um } from '../../src/units';
import { anyDay, type Day } from './any-day';
import { playDay } from './play-day';

const layOut: Day['acts'][number] = { kind: 'lay-out', keep: 'pinned', at: 0 };

/** What may not be, found copy by copy and pair by pair, by nothing that the app has. */
function broken({ film, copies, printedTo, spoiled, spans }: LaidRun): string[] {
  const found: string[] = [];
  const onSheets = film.kind === 'sheets';
  const sheetOf = ({ y }: LaidCopy) => (onSheets ? Math.floor(y / film.length) : 0);
  const stretches = onSheets ? [] : [...film.noPrint, ...spoiled];
  for (const [index, copy] of copies.entries()) {
    const { x, y, width, length, fixed } = copy;
    const start = onSheets ? sheetOf(copy) * film.length : 0;
    const end = onSheets ? start + film.length : film.lengthLeft - film.unreached - film.jobBlank;
    for (const other of copies.slice(index + 1)) {
      const across = Math.max(x, other.x) - Math.min(x + width, other.x + other.width);
      const along = Math.max(y, other.y) - Math.min(y + length, other.y + other.length);
      const isNear = across < film.gap && along < film.gap && sheetOf(copy) === sheetOf(other);
      if (isNear && !(fixed && other.fixed)) found.push('gap');
    }
    // Sheets of another length may be chosen when some are printed: what is printed is then told as it lies.
    const isCut = spans?.some(({ to }, at) => at < spans.length - 1 && to > y && to < y + length);
    if (isCut && !(fixed && onSheets)) found.push('knife');
    if (fixed) continue;
    if (x < film.margins.left || x + width > film.width - film.margins.right) found.push('side');
    if (y < start + film.margins.lead + film.curl || y + length > end - film.margins.tail) found.push('end');
    if (onSheets && sheetOf(copy) >= film.sheetsLeft) found.push('sheets');
    if (y < printedTo) found.push('printed');
    if (stretches.some(({ from, to }) => y < to && y + length > from)) found.push('no-print');
    if (copy.turned && copy.transfer.turn === 'fixed') found.push('turned');
  }
  if (!onSheets && film.spanMax !== null) {
    const most = film.spanMax;
    if (
      spans === null ? copies.every(({ fixed }) => !fixed) : spans.some(({ from, to }) => to - from > most)
    ) {
      found.push('span');
    }
  }
  return found;
}

describe('whatever is done to a layout', () => {
  it('nothing is shown that breaks a rule', () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        playDay(day, {
          see({ laid, act }) {
            expect([act, broken(laid)]).toEqual([act, []]);
            expect(faultsOf(laid).filter(({ breaks }) => breaks === 'rule')).toEqual([]);
          },
        });
      }),
      { numRuns: 100 },
    );
  });
});

describe('the check of a run', () => {
  it('finds a fault where comparing every pair finds one, and none where that finds none', () => {
    const told = { holds: 0, breaks: 0 };
    const move = fc.record({
      which: fc.nat({ max: 9 }),
      x: fc.integer({ min: -30_000, max: 30_000 }),
      y: fc.integer({ min: -60_000, max: 60_000 }),
      turns: fc.boolean(),
    });
    fc.assert(
      fc.property(anyDay, fc.array(move, { maxLength: 2 }), (day, moves) => {
        let shown: LaidRun | undefined;
        playDay(
          { ...day, acts: [layOut, ...day.acts.slice(0, 2)] },
          {
            see({ laid }) {
              shown = laid;
            },
          },
        );
        if (!shown) return;
        for (const { which, x, y, turns } of moves) {
          const copy = shown.copies[which];
          if (!copy || copy.fixed) continue;
          const lies = turns ? { width: copy.length, length: copy.width, turned: !copy.turned } : {};
          shown = withCopies(shown, [
            { ...copy, ...lies, x: um(copy.x + x), y: um(Math.max(0, copy.y + y)) },
          ]);
        }
        expect(holds(shown)).toBe(broken(shown).length === 0);
        told[holds(shown) ? 'holds' : 'breaks'] += 1;
      }),
      { numRuns: 100 },
    );
    expect(Math.min(told.holds, told.breaks)).toBeGreaterThan(10);
  });
});
