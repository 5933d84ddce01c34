import { describe, expect, it } from 'vitest';
import { type Finding, isMeant, meantSo, verdictOn } from '../../src/artwork';
import type { Id, Meant } from '../../src/model';
import { fromMm } from '../../src/units';

const artwork = 'crest' as Id<'artwork'>;
const haze = (share: number): Finding => ({
  code: 'see-through',
  grade: share < 0.1 ? 'check' : 'poor',
  share,
});
const coarse = (x: number, y: number): Finding => ({ code: 'coarse', grade: 'check', x, y });
const strokes = (count: number, mm: number): Finding => ({
  code: 'thin-strokes',
  grade: 'check',
  count,
  least: fromMm(mm),
  limit: fromMm(0.5),
});
const openings = (count: number, mm: number): Finding => ({
  code: 'openings',
  grade: 'check',
  count,
  least: fromMm(mm),
  limit: fromMm(0.8),
});
const ground: Finding = { code: 'ground', grade: 'poor', colour: [250, 250, 250] };
const deep: Finding = { code: 'deep', grade: 'good' };

const transfer = (...meant: Meant[]) => ({ artwork, meant });
const having = (finding: Finding) => transfer(meantSo(finding, artwork));

describe('a finding that is called meant', () => {
  it.each<[string, Finding, Finding, boolean]>([
    ['the same share', haze(0.2), haze(0.2), true],
    ['a smaller share', haze(0.2), haze(0.1), true],
    ['a larger share', haze(0.2), haze(0.21), false],
    ['the same pixels an inch', coarse(200, 210), coarse(200, 210), true],
    ['a smaller print', coarse(200, 210), coarse(240, 252), true],
    ['a larger print', coarse(200, 210), coarse(180, 189), false],
    ['a print stretched on one side', coarse(200, 210), coarse(200, 180), false],
    ['fewer strokes', strokes(5, 0.3), strokes(4, 0.3), true],
    ['more strokes', strokes(5, 0.3), strokes(6, 0.3), false],
    ['a thinner stroke', strokes(5, 0.3), strokes(5, 0.2), false],
    ['a wider opening', openings(2, 0.4), openings(2, 0.5), true],
    ['a narrower opening', openings(2, 0.4), openings(2, 0.3), false],
    ['a ground', ground, ground, true],
    ['another finding', haze(0.2), ground, false],
  ])('holds, or asks again, for %s', (_, before, now, holds) => {
    expect(isMeant(now, having(before))).toBe(holds);
  });

  it('asks again for another artwork, and for none', () => {
    const meant = [meantSo(ground, artwork)];
    expect(isMeant(ground, { artwork: 'other' as Id<'artwork'>, meant })).toBe(false);
    expect(isMeant(ground, { artwork: null, meant })).toBe(false);
  });
});

describe('the verdict on a transfer', () => {
  it('is the grade of the worst finding that is not called meant (rule 13)', () => {
    const found = [ground, haze(0.05)];
    expect(verdictOn(found, transfer())).toBe('poor');
    expect(verdictOn(found, having(ground))).toBe('check');
    expect(verdictOn(found, transfer(meantSo(ground, artwork), meantSo(haze(0.05), artwork)))).toBe('meant');
  });

  it('is good where nothing was found, or nothing that needs to be mended', () => {
    expect(verdictOn([], transfer())).toBe('good');
    expect(verdictOn([deep], having(ground))).toBe('good');
    expect(verdictOn([ground, deep], having(ground))).toBe('meant');
  });
});
