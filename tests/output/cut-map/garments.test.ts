import { describe, expect, it } from 'vitest';
import { cutMapPages } from '../../../src/output/cut-map';
import { longRun } from '../runs';
import { usual } from './usual';

/** The pages of a run with so many garments, and the texts of the last of them. */
function mapWith(count: number) {
  const garments = Array.from({ length: count }, (_, index) => `${index + 1} × T-shirt, navy, ${index}`);
  const pages = cutMapPages(longRun(3), { ...usual(), garments });
  const last = pages.at(-1)?.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])) ?? [];
  return { pages: pages.length, scale: pages.at(-1)?.scale ?? null, last, garments };
}

describe('the garments of a run', () => {
  it('stand beside the end of its film where there is room, on no sheet of their own', () => {
    const { pages, scale, last, garments } = mapWith(2);
    expect(pages).toBe(mapWith(0).pages);
    expect(scale).not.toBeNull();
    expect(last).toEqual(expect.arrayContaining(garments));
  });

  it('have a sheet of their own where there is none', () => {
    const { pages, scale, last, garments } = mapWith(70);
    expect(pages).toBeGreaterThan(mapWith(0).pages);
    expect(scale).toBeNull();
    expect(last).toEqual(expect.arrayContaining(garments));
  });
});
