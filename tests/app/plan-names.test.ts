import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planNames } from '../../app/cut/plan-names';

const film = { width: 330, height: 460 };

/** Copies of a row each, as narrow and as low as film is cut. */
const boxes = fc
  .array(fc.record({ width: fc.integer({ min: 4, max: 320 }), height: fc.integer({ min: 4, max: 60 }) }), {
    minLength: 1,
    maxLength: 40,
  })
  .map((sizes) => {
    let y = 0;
    return sizes.map(({ width, height }, index) => {
      y += height + 5;
      return { x: (index * 37) % (330 - width), y: y - height - 5, width, height, name: `HR ${index + 1}` };
    });
  });
const scale = fc.double({ min: 0.4, max: 3, noNaN: true });

describe('names on the plan of a span', () => {
  it('are all there, none smaller than 11 px, and none over another beside the film', () => {
    fc.assert(
      fc.property(boxes, scale, (copies, pixels) => {
        const names = planNames(copies, film, pixels);
        expect(names).toHaveLength(copies.length);
        for (const { size } of names) expect(size * pixels).toBeGreaterThanOrEqual(11 - 1e-9);
        const led = names.filter(({ leads }) => leads !== null);
        for (const [index, one] of led.entries())
          for (const other of led.slice(0, index))
            expect(
              Math.abs(one.y - other.y) >= one.size - 1e-9 || Math.sign(one.x) !== Math.sign(other.x),
            ).toBe(true);
      }),
    );
  });

  it('stand in their copies where there is room, upright in narrow ones', () => {
    const names = planNames(
      [
        { x: 10, y: 10, width: 100, height: 40, name: 'SF 11' },
        { x: 150, y: 10, width: 20, height: 120, name: 'HR 14' },
        { x: 200, y: 10, width: 10, height: 12, name: 'GT 6' },
      ],
      film,
      1,
    );
    expect(names.map(({ isUpright, leads }) => [isUpright, leads !== null])).toEqual([
      [false, false],
      [true, false],
      [false, true],
    ]);
  });
});
