import { strToU8, zipSync } from 'fflate';
import { expect, it, vi } from 'vitest';
import { MODEL_VERSION, recordsOf } from '../../src/model';
import { unpackBundle } from '../../src/output/backup';
import { smallBook, smallSettings } from '../editing/book';
import { hash, sourceOf } from './packed-backup';

vi.mock('../../src/model/migrations/every-migration', () => {
  throw new TypeError('could not be fetched');
});

it('a backup of an older version is not called damaged where what reads it cannot be fetched', async () => {
  const records = Object.fromEntries(recordsOf(smallBook().book));
  const backup = async (version: number) => {
    const book = strToU8(JSON.stringify({ format: 'rollwright backup', version, records }));
    const manifest = { format: 'rollwright backup manifest', book: await hash(book), images: [] };
    const bytes = zipSync({ 'book.json': book, 'manifest.json': strToU8(JSON.stringify(manifest)) });
    return unpackBundle(sourceOf(bytes), hash, smallSettings());
  };
  expect(await backup(MODEL_VERSION - 1)).toEqual({ ok: false, problem: { code: 'part-missing' } });
  expect(await backup(MODEL_VERSION)).toMatchObject({ ok: true });
});
