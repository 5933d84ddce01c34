import { describe, expect, it } from 'vitest';
import { demo as demoWords } from '../../app/words/en/demo';
import { addDemoDay, missingArtwork } from '../../src/demo';
import { drawings, type Pen } from '../../src/demo/drawings';
import { boardOf } from '../../src/demo/drawings/boards';
import { setArtwork } from '../../src/editing';
import { problemOf } from '../../src/layout';
import { type Artwork, asId, runOf } from '../../src/model';
import { createPlanner, validatePlan } from '../../src/packing';
import type { LocalDate } from '../../src/units';
import { context, edited, freshIds, smallBook } from '../editing/book';

const ids = { ...context(), newId: <Kind extends string>() => asId<Kind>(crypto.randomUUID()) };
const dayFrom = (days: number) => `2026-12-${String(days + 1).padStart(2, '0')}` as LocalDate;
const demo = (unit: 'mm' | 'in') =>
  edited(smallBook().book, (draft) =>
    addDemoDay(draft, { dayFrom, unit, words: demoWords, typed: (length) => `${length / 1000} mm` }, ids),
  );

describe('the demo day', () => {
  it.each(['mm', 'in'] as const)('is a full day, typed in %s', (unit) => {
    const book = demo(unit);
    // One order, two transfers and five copies were there before.
    expect(Object.keys(book.order).length - 1).toBeGreaterThanOrEqual(8);
    expect(Object.keys(book.transfer).length - 2).toBeGreaterThanOrEqual(25);
    expect(Object.keys(book.copy).length - 5).toBeGreaterThanOrEqual(90);
    const codes = Object.values(book.order).map(({ code }) => code);
    expect(new Set(codes).size).toBe(codes.length);
  });

  it('has no two transfers of an order that share a width, by which a drawing is told', () => {
    for (const unit of ['mm', 'in'] as const) {
      const drawn = Object.values(demo(unit).transfer).filter(
        ({ name }) => name !== 'front' && name !== 'tag',
      );
      const sizes = drawn.map(({ order, width }) => `${order} ${width}`);
      expect(new Set(sizes).size).toBe(sizes.length);
    }
  });

  it.each([
    // A shop's ruler has sixteenths of an inch; a tape in millimetres is read to five.
    ['in', 'whole sixteenths of an inch', 25_400 / 16, 25_400 / 8],
    ['mm', 'fives of millimetres wide, their artwork unstretched', 100, 5000],
  ] as const)('has sizes that a shop in %s orders: %s', (unit, _, part, widths) => {
    const off = (length: number, step: number) => Math.abs(length - step * Math.round(length / step));
    for (const { name, width, height } of Object.values(demo(unit).transfer)) {
      if (name === 'front' || name === 'tag') continue;
      // Lengths are whole micrometres.
      expect([name, off(width, widths) <= 0.5, off(height, part) <= 0.5]).toEqual([name, true, true]);
    }
  });

  it('stretches no drawing by more than is found fault with', () => {
    for (const unit of ['mm', 'in'] as const) {
      const book = demo(unit);
      for (const { transfer, drawing } of missingArtwork(book)) {
        const { width, height } = book.transfer[transfer] ?? expect.fail();
        const board = boardOf[drawing];
        expect(Math.abs((height * board.width) / (width * board.height) - 1)).toBeLessThan(0.005);
      }
    }
  });

  it('fits its film', () => {
    const book = demo('mm');
    const draft = runOf(book, null);
    if (!draft) throw new Error('no draft');
    const { problem } = problemOf(book, draft.run, draft.film, 'pinned');
    const plan = createPlanner(problem, 1).best();
    expect(validatePlan(problem, plan)).toEqual([]);
    expect(plan.unplaced).toEqual([]);
  });

  it('knows what of its artwork is still to be drawn', () => {
    const book = demo('mm');
    const missing = missingArtwork(book);
    expect(missing.length).toBeGreaterThanOrEqual(25);
    const [first] = missing;
    const drawn = edited(book, (draft) =>
      setArtwork(
        draft,
        first?.transfer ?? '',
        {
          id: 'art' as Artwork['id'],
          fileName: 'art.png',
          kind: 'png',
          pixels: { width: 1, height: 1 },
          density: null,
          trim: null,
          madeFrom: null,
        },
        freshIds(),
      ),
    );
    expect(missingArtwork(drawn)).toEqual(missing.slice(1));
  });
});

/** A pen that counts what it fills, what is saved of it and what is taken back. */
function countingPen() {
  const counts = { inked: 0, saved: 0, restored: 0 };
  const settings: Record<string, unknown> = {};
  const act = (name: string, args: readonly unknown[]): unknown => {
    if (name === 'save') counts.saved += 1;
    else if (name === 'restore') {
      counts.restored += 1;
      if (counts.restored > counts.saved) throw new Error('nothing was saved');
    } else if (['fill', 'stroke', 'fillText'].includes(name)) counts.inked += 1;
    return name === 'measureText' ? { width: 40 * String(args[0]).length } : undefined;
  };
  const pen = new Proxy(settings, {
    get: (_, name: string) => settings[name] ?? ((...args: unknown[]) => act(name, args)),
  });
  return { pen: pen as unknown as Pen, counts };
}

const painted = Object.entries(drawings).map(([name, { width, height, paint }]) => {
  const { pen, counts } = countingPen();
  return { name, width, height, counts, paint: () => paint(pen) };
});

describe.each(painted)('the drawing $name', ({ width, height, counts, paint }) => {
  it('puts ink on its board', () => {
    paint();
    expect(Math.min(width, height)).toBeGreaterThan(0);
    expect(counts.inked).toBeGreaterThan(0);
  });
});

it('each drawing that saves the pen takes all of it back', () => {
  const saving = painted.filter(({ counts }) => counts.saved > 0);
  expect(saving.map(({ name }) => name)).toContain('crossedOars');
  for (const { name, counts } of saving) expect([name, counts.restored]).toEqual([name, counts.saved]);
});
