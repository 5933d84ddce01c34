import { describe, expect, it } from 'vitest';
import { cutMapPages } from '../../../src/output/cut-map';
import { onSheets } from '../runs';
import { readBack, usual } from './usual';

/** Seven sheets of A4 with a copy on each. */
const seven = onSheets(
  Array.from({ length: 7 }, (_, sheet) => ({
    code: 'HB',
    number: sheet + 1,
    x: 10,
    y: 297 * sheet + 10,
    width: 150,
    length: 200,
  })),
);

describe('the map of a run on sheets', () => {
  it.each([
    ['filled pages', { large: false, perSpan: false }],
    ['large figures', { large: true, perSpan: false }],
    ['a page a sheet', { large: false, perSpan: true }],
  ])('tells each sheet and its size, and nothing of a roll or of knife lines: %s', async (_, form) => {
    const map = usual();
    const read = await readBack(cutMapPages(seven, { ...map, form: { ...map.form, ...form } }));
    const texts = read.flatMap((page) => page.texts.map(({ text }) => text));
    for (let sheet = 1; sheet <= 7; sheet += 1)
      expect(texts.filter((text) => text === `Sheet ${sheet} of 7`)).not.toEqual([]);
    expect(texts).toContain('210 × 297 mm');
    expect(texts.join(' ')).toContain('7 sheets, 210 × 297 mm');
    // The caution and what it is about are of any film.
    const told = texts.filter((text) => !/scissors|film held flat/i.test(text)).join(' ');
    expect(told).not.toMatch(/roll|cut off|cut before|from start|\bspan/i);
    if (form.perSpan) expect(read).toHaveLength(7);
  });
});
