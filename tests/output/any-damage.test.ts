import fc from 'fast-check';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { MODEL_VERSION, readKept, recordsOf, writeKept } from '../../src/model';
import { unpackBundle } from '../../src/output/backup';
import { smallBook, smallSettings } from '../editing/book';
import { CASES, damagedBytes, damagedValue, timer } from '../model/damage';
import { hash, packed, sourceOf } from './packed-backup';

const { book } = smallBook();
const { bytes: whole } = await packed(book);
const written: unknown = JSON.parse(writeKept(recordsOf(book)));
const first = smallSettings();

/** A backup, whole by its digests and stored as it is, of a book that may be anything. */
async function packedValue(value: unknown): Promise<Uint8Array> {
  const text = strToU8(JSON.stringify(value) ?? '');
  const manifest = {
    format: 'rollwright backup manifest',
    book: await hash(new Uint8Array(text)),
    images: [],
  };
  return zipSync({ 'book.json': text, 'manifest.json': strToU8(JSON.stringify(manifest)) }, { level: 0 });
}

describe('any damage to a backup', () => {
  const timed = timer('backups');
  const unpack = (bytes: Uint8Array) => timed(() => unpackBundle(sourceOf(bytes), hash, first));

  it('of its bytes is told, or changes nothing', async () => {
    await fc.assert(
      fc.asyncProperty(damagedBytes(whole), async (bytes) => {
        const read = await unpack(bytes);
        if (read.ok) expect(read.value).toMatchObject({ book, setAside: [], fellBack: [], missing: [] });
      }),
      { numRuns: CASES },
    );
  });

  it('of what it says is told or set aside, and the rest can be read whole', async () => {
    await fc.assert(
      fc.asyncProperty(damagedValue(written), async (value) => {
        const read = await unpack(await packedValue(value));
        if (!read.ok) return;
        const kept = await readKept(recordsOf(read.value.book), MODEL_VERSION);
        expect(kept).toMatchObject({ ok: true, value: { setAside: [] } });
      }),
      { numRuns: CASES },
    );
  });
});
