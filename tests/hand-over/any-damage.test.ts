import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { benchEdits, session } from '../../src/editing';
import {
  type Collected,
  codesOf,
  collect,
  handOverRun,
  readHandOver,
  wholeOf,
  writeHandOver,
} from '../../src/hand-over';
import { seal, unseal } from '../../src/hand-over/sealed';
import { MODEL_VERSION, readKept, recordsOf } from '../../src/model';
import { freshIds, NOW, smallBook } from '../editing/book';
import { CASES, damagedBytes, damagedValue, timer } from '../model/damage';
import { hash, locked, run } from './shop';

const handOver = handOverRun(locked, run, null, NOW);
const sealed = handOver ? await writeHandOver(handOver, hash) : expect.fail('a locked run is handed over');
const text = await unseal(sealed, hash);
const content: unknown = text.ok ? JSON.parse(text.value) : null;
const codes = codesOf(sealed) ?? expect.fail('few enough codes');
const { book } = smallBook();

describe('any damage to a hand-over', () => {
  const timed = timer('hand-overs');
  const readAll = (bytes: Uint8Array<ArrayBuffer>) => timed(() => readHandOver(bytes, hash));

  it('of its bytes is told, or changes nothing', async () => {
    await fc.assert(
      fc.asyncProperty(damagedBytes(sealed), async (bytes) => {
        const read = await readAll(bytes);
        if (read.ok) expect(bytes).toEqual(sealed);
      }),
      { numRuns: CASES },
    );
  });

  it('of what it says is told, or leaves a book that can be read whole', async () => {
    await fc.assert(
      fc.asyncProperty(damagedValue(content), async (value) => {
        const read = await readAll(await seal(JSON.stringify(value) ?? '', hash));
        if (!read.ok) return;
        const taken = session(book, benchEdits.takeIn(read.value), freshIds()).book;
        const kept = await readKept(recordsOf(taken), MODEL_VERSION);
        expect(kept).toMatchObject({ ok: true, value: { setAside: [] } });
        // Nothing of the book that was there is lost.
        expect(Object.keys(taken.order)).toEqual(Object.keys(book.order));
      }),
      { numRuns: CASES },
    );
  });
});

describe('codes read in any order, damaged or of anything', () => {
  const timed = timer('codes');

  it('give the very bytes that were sealed, or none', () => {
    const code = fc.constantFrom(...codes);
    const bytes = new TextEncoder();
    const anyCode = fc.oneof(
      { weight: 3, arbitrary: code },
      code.chain((own) => damagedBytes(bytes.encode(own))).map((own) => new TextDecoder().decode(own)),
      fc.string(),
      fc.string().map((rest) => `RWHO1:${rest.toUpperCase()}`),
    );
    fc.assert(
      fc.property(fc.array(anyCode, { maxLength: codes.length + 2 }), (read) => {
        let collected: Collected | null = null;
        for (const each of read) {
          const next = timed(() => collect(collected, each));
          if (next.ok) collected = next.value;
        }
        const whole = collected && wholeOf(collected);
        if (whole) expect(whole).toEqual(sealed);
      }),
      { numRuns: CASES },
    );
  });
});
