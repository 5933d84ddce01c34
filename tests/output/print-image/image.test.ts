import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LaidRun } from '../../../src/layout';
import type { Sheets } from '../../../src/model';
import { framesOf, type ImageChoice, imageOf, type PrintImage } from '../../../src/output/print-image';
import { asMinor, fromMm, um } from '../../../src/units';
import { letterF, longRun, runOf } from '../runs';

const plain: ImageChoice = {
  ppi: 300,
  mirrored: false,
  firstEnd: 'lead',
  feed: 1,
  marks: { ticks: false, numbers: false, names: null, corners: false },
};

function wholeImage(run: LaidRun, choice: Partial<ImageChoice> = {}): PrintImage {
  const [frame] = framesOf(run, { kind: 'run' });
  if (!frame) throw new Error('nothing lies on the film');
  return imageOf(run, frame, { ...plain, ...choice });
}

describe('the size of an image', () => {
  // 1 in = 25.4 mm (NIST SP 811): 330.2 mm are 13 in.
  it.each([
    [150, 1950],
    [300, 3900],
    [360, 4680],
    [720, 9360],
  ])('13 in of film at %i ppi are %i pixels', (ppi, pixels) => {
    const run = runOf([{ code: 'A', number: 1, x: 10, y: 10, width: 25.4, length: 50.8 }], {
      width: fromMm(330.2),
    });
    const image = wholeImage(run, { ppi });
    expect(image.width).toBe(pixels);
    expect(image.copies[0]).toMatchObject({ width: ppi, height: 2 * ppi });
  });

  it('6 m at 300 ppi are 70,866 rows', () => {
    const run = runOf([{ code: 'A', number: 1, x: 10, y: 5890, width: 100, length: 100 }], { spanMax: null });
    expect(wholeImage(run).height).toBe(Math.round((6000 / 0.0254 / 1000) * 300));
  });
});

/** Copies in rows, by sizes and gaps in micrometres: none overlaps another on the film. */
const layouts = fc
  .record({
    gap: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 400 }), fc.integer({ min: 2000, max: 9000 })),
    side: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 5000 })),
    rows: fc.array(
      fc.array(fc.record({ width: fc.integer({ min: 300, max: 90_000 }), turned: fc.boolean() }), {
        minLength: 1,
        maxLength: 5,
      }),
      { minLength: 1, maxLength: 6 },
    ),
    length: fc.integer({ min: 300, max: 70_000 }),
  })
  .map(({ gap, side, rows, length }) => {
    const millimetres = 1000;
    let [y, number, widest] = [side, 0, 0];
    const boxes = rows.flatMap((row) => {
      let x = side;
      const placed = row.map(({ width, turned }) => {
        number += 1;
        const box = { code: 'A', number, x: x / millimetres, y: y / millimetres, turned };
        x += width + gap;
        return { ...box, width: width / millimetres, length: length / millimetres };
      });
      widest = Math.max(widest, x - gap);
      y += length + gap;
      return placed;
    });
    const margins = { left: um(side), right: um(side), lead: um(side), tail: um(side) };
    return runOf(boxes, { gap: um(gap), width: um(widest + side), margins, spanMax: null });
  });

const choices = fc.record({
  ppi: fc.integer({ min: 150, max: 720 }),
  mirrored: fc.boolean(),
  firstEnd: fc.constantFrom('lead' as const, 'tail' as const),
  marks: fc.record({
    ticks: fc.boolean(),
    numbers: fc.boolean(),
    names: fc.constantFrom(null, (order: string) => order),
    corners: fc.boolean(),
  }),
});

describe('the boxes of an image', () => {
  it('share no pixel, lie within it, and are true within half a pixel, or within one where copies touch', () => {
    fc.assert(
      fc.property(layouts, choices, (run, choice) => {
        const image = wholeImage(run, choice);
        const boxes = [...image.copies, ...image.marks];
        for (const [index, a] of boxes.entries()) {
          expect(a.x).toBeGreaterThanOrEqual(0);
          expect(a.y).toBeGreaterThanOrEqual(0);
          expect(a.x + a.width).toBeLessThanOrEqual(image.width);
          expect(a.y + a.height).toBeLessThanOrEqual(image.height);
          for (const b of boxes.slice(index + 1)) {
            const apart =
              a.x + a.width <= b.x || b.x + b.width <= a.x || a.y + a.height <= b.y || b.y + b.height <= a.y;
            // Two bars that make a registration corner share its angle.
            const isCorner = [a, b].every((each) => 'text' in each && each.text === null);
            expect(apart || (choice.marks.corners && isCorner)).toBe(true);
          }
        }
        const scale = choice.ppi / 25_400;
        const { gap, margins } = run.film;
        const within = Math.min(gap, margins.right, margins.tail) * scale >= 0.5 ? 0.5 : 1;
        for (const copy of run.copies) {
          const box = image.copies.find((each) => each.copy === copy.id);
          for (const [pixels, length] of [
            [box?.width, copy.width],
            [box?.height, copy.length],
          ] as const) {
            const off = Math.abs((pixels ?? 0) - length * scale);
            expect(off <= within + 1e-9 || pixels === 1).toBe(true);
          }
        }
      }),
    );
  });

  it('of one transfer are all of one size, wherever they lie', () => {
    const image = wholeImage(longRun(9, null), { ppi: 317 });
    expect(new Set(image.copies.map(({ width, height }) => `${width} ${height}`)).size).toBe(1);
  });
});

describe('an F in the image', () => {
  const limbs = (choice: Partial<ImageChoice>) => {
    const image = wholeImage(letterF(), choice);
    const at = (copy: string) => {
      const box = image.copies.find((each) => each.copy === copy);
      if (!box) throw new Error('a limb is missing');
      return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    };
    const [stem, long, short] = [at('F-1'), at('F-2'), at('F-3')];
    return { armsRight: long.x > stem.x && short.x > stem.x, longOnTop: long.y < short.y };
  };

  // The map as seen on screen, and the canvas turned by a quarter, show it so: tests/output/cut-map, tests/app/viewport.
  it('reads as on the screen, the leading edge on top', () => {
    expect(limbs({})).toEqual({ armsRight: true, longOnTop: true });
  });

  it('is mirrored across, and only across, where that is asked for', () => {
    expect(limbs({ mirrored: true })).toEqual({ armsRight: false, longOnTop: true });
  });

  it('is turned half round for a printer that prints the tail first, so that its lead comes out first', () => {
    expect(limbs({ firstEnd: 'tail' })).toEqual({ armsRight: false, longOnTop: false });
    expect(limbs({ firstEnd: 'tail', mirrored: true })).toEqual({ armsRight: true, longOnTop: false });
  });
});

describe('what is written', () => {
  const run = longRun(20);
  const spans = run.spans ?? [];

  it('is one image a span, each as long as its span, and all copies once', () => {
    const frames = framesOf(run, { kind: 'spans' });
    expect(frames.map(({ from, to }) => ({ from, to }))).toEqual(spans);
    expect(frames.flatMap(({ copies }) => copies.map(({ id }) => id)).sort()).toEqual(
      run.copies.map(({ id }) => id).sort(),
    );
    expect(framesOf(run, { kind: 'span', number: 2 })).toEqual([frames[1]]);
  });

  it('leaves out what is printed already', () => {
    const printedTo = spans[0]?.to ?? um(0);
    const [frame] = framesOf({ ...run, printedTo }, { kind: 'run' });
    expect(frame?.from).toBe(printedTo);
    expect(frame?.copies.every(({ y }) => y >= printedTo)).toBe(true);
    expect(framesOf({ ...run, printedTo }, { kind: 'spans' })).toHaveLength(spans.length - 1);
    expect(framesOf({ ...run, printedTo, state: 'printed' }, { kind: 'run' })[0]?.from).toBe(0);
  });

  it('takes chosen copies where they lie across the film, with the blank ends of a job', () => {
    const chosen = run.copies.slice(4, 6);
    const copies = new Set<string>(chosen.map(({ id }) => id));
    const [frame] = framesOf(run, { kind: 'chosen', copies });
    const [first] = chosen;
    if (!frame || !first) throw new Error('nothing was chosen');
    expect(frame.copies).toEqual(chosen);
    expect(frame.from).toBe(first.y - run.film.margins.lead);
    const image = imageOf(run, frame, plain);
    // 110 mm from the edge, 10 mm of blank before it.
    expect(image.copies[0]).toMatchObject({
      x: Math.round((110 / 25.4) * 300),
      y: Math.round((10 / 25.4) * 300),
    });
    expect(framesOf(run, { kind: 'chosen', copies: new Set() })).toEqual([]);
  });

  it('is one image a sheet', () => {
    const {
      kind: _,
      lengthLeft,
      spanMax,
      jobBlank,
      cutBlank,
      unreached,
      noPrint,
      ...shared
    } = run.film as Extract<LaidRun['film'], { kind: 'roll' }>;
    const film: Sheets = {
      ...shared,
      kind: 'sheets',
      length: fromMm(297),
      sheetsLeft: 9,
      price: asMinor(90),
    };
    const boxes = [10, 307, 604].map((y, index) => ({
      code: 'A',
      number: index + 1,
      x: 10,
      y,
      width: 100,
      length: 90,
    }));
    const onSheets = {
      ...runOf(boxes),
      film,
      lengthUsed: fromMm(891),
      spans: [0, 1, 2].map((sheet) => ({ from: fromMm(297 * sheet), to: fromMm(297 * (sheet + 1)) })),
    };
    for (const kind of ['run', 'spans'] as const) {
      const images = framesOf(onSheets, { kind }).map((frame) => imageOf(onSheets, frame, plain));
      expect(images.map(({ part }) => part)).toEqual([1, 2, 3].map((number) => ({ kind: 'sheet', number })));
      // A4 is 297 mm long (ISO 216).
      expect(new Set(images.map(({ height }) => height))).toEqual(new Set([3508]));
      expect(new Set(images.map(({ copies }) => copies[0]?.y)).size).toBe(1);
    }
    const copies = new Set(['A-3']);
    expect(framesOf(onSheets, { kind: 'chosen', copies }).map(({ part }) => part)).toEqual([
      { kind: 'sheet', number: 3 },
    ]);
  });
});

describe('marks', () => {
  const marked = (gap: number, spanMax: number | null = 110) => {
    const boxes = [0, 1, 2, 3, 4, 5].map((index) => ({
      code: 'HB',
      number: index + 1,
      x: 10 + (index % 2) * (100 + gap),
      y: 10 + Math.floor(index / 2) * (90 + gap),
      width: 100,
      length: 90,
    }));
    return wholeImage(
      runOf(boxes, { gap: fromMm(gap), spanMax: spanMax === null ? null : fromMm(spanMax) }),
      {
        marks: { ticks: true, numbers: true, names: null, corners: false },
      },
    );
  };

  it('are numbers 4 mm tall where the gap has room, and left out where it has not', () => {
    const roomy = marked(6, null);
    const numbers = roomy.marks.filter(({ text }) => text !== null);
    expect(numbers.map(({ text }) => text).sort()).toEqual(['HB 1', 'HB 2', 'HB 3', 'HB 4', 'HB 5', 'HB 6']);
    for (const { height } of numbers) expect(height).toBe(Math.ceil((4 / 25.4) * 300));
    expect(roomy.unnumbered).toBe(0);
    // A knife line in the middle of such a gap leaves 3 mm on either side.
    expect(marked(6).unnumbered).toBe(1);
    // There is room before the first row, behind the last one and right of all, but none at the left between two rows.
    const tight = marked(3);
    expect(tight.unnumbered).toBe(1);
    expect(tight.marks.flatMap(({ text }) => text ?? []).sort()).toEqual([
      'HB 1',
      'HB 2',
      'HB 4',
      'HB 5',
      'HB 6',
    ]);
  });

  it('are bars at both printable edges where a knife line is', () => {
    const { marks, width } = marked(6);
    const bars = marks.filter(({ text }) => text === null);
    expect(bars.length).toBeGreaterThanOrEqual(2);
    const edge = Math.round((5 / 25.4) * 300);
    for (const bar of bars) {
      expect(bar.x === edge || Math.abs(bar.x + bar.width - (width - edge)) <= 1).toBe(true);
    }
  });

  it('are off unless they are asked for', () => {
    expect(wholeImage(longRun(9)).marks).toEqual([]);
  });
});
