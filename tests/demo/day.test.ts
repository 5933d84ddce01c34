import { describe, expect, it } from 'vitest';
import { demo as demoWords } from '../../app/words/en/demo';
import { addDemoDay, missingArtwork } from '../../src/demo';
import { drawings, type Pen } from '../../src/demo/drawings';
import { setArtwork } from '../../src/editing';
import { problemOf } from '../../src/layout';
import { type Artwork, runOf } from '../../src/model';
import { createPlanner, validatePlan } from '../../src/packing';
import type { LocalDate } from '../../src/units';
import { context, edited, freshIds, smallBook } from '../editing/book';

const ids = { ...context(), newId: () => crypto.randomUUID() };
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

/** A pen that notes how far it moved and what it filled. */
function notingPen() {
  const calls: string[] = [];
  const note =
    (name: string) =>
    (...args: unknown[]) => {
      calls.push(`${name}(${args.join()})`);
    };
  const pen = new Proxy({} as Record<string, unknown>, {
    get: (target, key: string) => {
      if (key === 'measureText') return (text: string) => ({ width: 40 * text.length });
      return key in target ? target[key] : note(key);
    },
    set: (target, key: string, value) => {
      target[key] = value;
      return true;
    },
  });
  return { pen: pen as unknown as Pen, calls };
}

describe.each(Object.entries(drawings))('the drawing %s', (_, { width, height, paint }) => {
  it('puts ink on its board and leaves the pen as it was', () => {
    const { pen, calls } = notingPen();
    paint(pen);
    expect(Math.min(width, height)).toBeGreaterThan(0);
    expect(calls.filter((call) => /^(fill|stroke|fillText)\(/.test(call)).length).toBeGreaterThan(0);
    const balance = (name: string) => calls.filter((call) => call.startsWith(`${name}(`)).length;
    expect(balance('save')).toBe(balance('restore'));
  });
});
