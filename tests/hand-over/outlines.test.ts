import { describe, expect, it } from 'vitest';
import { codesOf, handOverRun, MOST_CODES, readHandOver, writeHandOver } from '../../src/hand-over';
import { type Book, OUTLINE_STEPS } from '../../src/model';
import { edited, NOW } from '../editing/book';
import { hash, locked, run } from './shop';

/** A star of 120 corners, as many as an outline has at most. */
const star = Array.from({ length: 120 }, (_, at) => {
  const ray = (at % 2 === 0 ? 0.5 : 0.31 + 0.0013 * at) * OUTLINE_STEPS;
  const turn = (2 * Math.PI * at) / 120;
  return [Math.cos(turn), Math.sin(turn)].map((side) => Math.round(OUTLINE_STEPS / 2 + side * ray));
}).flat();

/** The shop's run, laid and locked by outlines. */
const outlined: Book = edited(locked, (draft) => {
  const own = draft.run[run];
  if (!own || own.state === 'draft') return;
  own.laidBy = 'outlines';
  own.snapshot.outlines = Object.fromEntries(own.snapshot.transfers.map(({ id }) => [id, [star]]));
});

const handed = async (carried?: 'outlines' | 'boxes') => {
  const handOver = handOverRun(outlined, run, null, NOW, carried);
  const sealed = await writeHandOver(handOver ?? expect.fail(), hash);
  const read = await readHandOver(sealed, hash);
  if (!read.ok || read.value.kind !== 'run') return expect.fail();
  return { codes: codesOf(sealed), outlines: read.value.run.snapshot.outlines, bytes: sealed.length };
};

describe('a run that is laid by outlines', () => {
  it('is handed over by codes with the outlines of its transfers, of 120 corners each', async () => {
    const { codes, outlines } = await handed();
    expect(Object.values(outlines)).toEqual([[star], [star]]);
    expect(codes?.length).toBeLessThanOrEqual(MOST_CODES);
  });

  it('goes without them where codes have no room', async () => {
    const [whole, bare] = [await handed(), await handed('boxes')];
    expect(bare.outlines).toEqual({});
    expect(bare.bytes).toBeLessThan(whole.bytes);
  });
});
