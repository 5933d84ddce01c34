import { execFileSync, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { MODEL_VERSION } from '../../src/model';
import { packBundle, unpackBundle } from '../../src/output/backup';
import { smallBook } from '../editing/book';

const hasPython = spawnSync('python3', ['--version']).status === 0;
const hash = async (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
const image = strToU8('not looked into here');
const { book } = smallBook();

describe('a backup', () => {
  it('comes back as it was saved', async () => {
    const artwork = new Map([[await hash(image), image]]);
    const read = await unpackBundle(packBundle({ book, artwork }), hash);
    expect(read).toEqual({ ok: true, value: { book, artwork } });
  });

  it.skipIf(!hasPython)('is a zip file that another tool reads (skipped without Python)', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'rollwright-'));
    try {
      const file = join(folder, 'backup.zip');
      writeFileSync(file, packBundle({ book, artwork: new Map([[await hash(image), image]]) }));
      // Python's zipfile stands for any reader of APPNOTE.
      const listed = JSON.parse(
        execFileSync(
          'python3',
          [
            '-c',
            `import zipfile,json;z=zipfile.ZipFile(${JSON.stringify(file)});print(json.dumps([z.testzip(),z.namelist()]))`,
          ],
          { encoding: 'utf8' },
        ),
      );
      expect(listed).toEqual([null, ['book.json', `artwork/${await hash(image)}`]]);
      expect(readFileSync(file).length).toBeGreaterThan(100);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  it.each([
    ['what is no zip', strToU8('order,transfer'), 'not-backup'],
    ['a zip of something else', zipSync({ 'a.txt': strToU8('a') }), 'not-backup'],
    [
      'one of a newer version',
      zipSync({
        'book.json': strToU8(
          JSON.stringify({ format: 'rollwright backup', version: MODEL_VERSION + 1, records: {} }),
        ),
      }),
      'newer',
    ],
    [
      'one with a record that is not whole',
      zipSync({
        'book.json': strToU8(
          JSON.stringify({
            format: 'rollwright backup',
            version: MODEL_VERSION,
            records: { 'order/a': { id: 'a' } },
          }),
        ),
      }),
      'damaged',
    ],
    ['one cut off', packBundle({ book, artwork: new Map() }).slice(0, 300), 'damaged'],
  ])('is refused where it is %s', async (_, bytes, problem) => {
    expect(await unpackBundle(bytes, hash)).toEqual({ ok: false, problem });
  });

  it('is refused where an image was changed', async () => {
    const artwork = new Map([['0'.repeat(64), image]]);
    expect(await unpackBundle(packBundle({ book, artwork }), hash)).toEqual({
      ok: false,
      problem: 'damaged',
    });
  });
});
