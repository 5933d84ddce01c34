import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strToU8, unzipSync, type Zippable, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import {
  type Artwork,
  type Book,
  MODEL_VERSION,
  recordsOf,
  type StoredRecords,
  settingsOf,
  writeKept,
} from '../../src/model';
import { bytesOf, unpackBundle } from '../../src/output/backup';
import { seededRandom } from '../../src/units';
import { edited, NOW, smallBook, smallSettings } from '../editing/book';
import { hash, packed, sourceOf } from './packed-backup';

const hasPython = spawnSync('python3', ['--version']).status === 0;
const image = strToU8('not looked into here');
const id = (await hash(image)) as Artwork['id'];
const crest: Artwork = {
  id,
  fileName: 'crest.png',
  kind: 'png',
  pixels: { width: 10, height: 10 },
  density: null,
  trim: null,
  madeFrom: null,
  outline: null,
  outlinedBy: 0,
  changed: NOW,
};
const small = smallBook();
/** Its front has the crest. */
const book: Book = edited({ ...small.book, artwork: { [id]: crest } }, (draft) => {
  const front = draft.transfer[small.front];
  if (front) front.artwork = id;
});
const whole = await packed(book, [[id, image]]);

const unpack = (bytes: Uint8Array) => unpackBundle(sourceOf(bytes), hash, smallSettings());
const problemOf = async (bytes: Uint8Array) => {
  const read = await unpack(bytes);
  return read.ok ? null : read.problem;
};
/** The parts of a backup, some of them changed, packed anew by another tool: its check sums are right. */
const repacked = (change: (parts: Zippable) => Zippable) => zipSync(change({ ...unzipSync(whole.bytes) }));

describe('a backup', () => {
  it('comes back as it was saved', async () => {
    const read = await unpack(whole.bytes);
    expect(read).toMatchObject({ ok: true, value: { book, isVerified: true } });
    const [part] = read.ok ? read.value.artwork.values() : [];
    expect(part && (await bytesOf(sourceOf(whole.bytes), part))).toEqual(new Uint8Array(image));
  });

  it.skipIf(!hasPython)('is a zip file that another tool reads (skipped without Python)', () => {
    const folder = mkdtempSync(join(tmpdir(), 'rollwright-'));
    try {
      const file = join(folder, 'backup.zip');
      writeFileSync(file, whole.bytes);
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
      expect(listed).toEqual([null, ['book.json', `artwork/${id}`, 'manifest.json']]);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  it('leaves out an image whose bytes have changed in storage, and says which', async () => {
    const altered = await packed(book, [[id, strToU8('something else')]]);
    expect(altered.leftOut).toEqual([id]);
    expect(await unpack(altered.bytes)).toMatchObject({ ok: true });
  });

  it('is never another one with any bit changed', async () => {
    const random = seededRandom(14);
    let refused = 0;
    for (let turn = 0; turn < 1000; turn += 1) {
      const bytes = whole.bytes.slice();
      const at = Math.floor(random() * bytes.length);
      bytes[at] = (bytes[at] ?? 0) ^ (1 << Math.floor(random() * 8));
      const read = await unpack(bytes);
      if (!read.ok) refused += 1;
      else {
        const { artwork, missing, ...rest } = read.value;
        expect(rest, `bit of byte ${at}`).toMatchObject({
          book,
          isVerified: true,
          setAside: [],
          fellBack: [],
        });
        expect([...artwork.keys(), ...missing]).toEqual([id]);
      }
    }
    expect(refused).toBeGreaterThan(500);
  });
});

/** A backup, whole by its digests, of records of which some are damaged. */
async function packedRecords(records: StoredRecords): Promise<Uint8Array> {
  const written = strToU8(writeKept(records));
  const manifest = {
    format: 'rollwright backup manifest',
    book: await hash(new Uint8Array(written)),
    images: [id],
  };
  return zipSync({
    'book.json': written,
    [`artwork/${id}`]: image,
    'manifest.json': strToU8(JSON.stringify(manifest)),
  });
}

describe('a backup of which something cannot be read', () => {
  const records: StoredRecords = recordsOf(book);
  const damagedAt = (key: string, record: unknown) => new Map<string, unknown>(records).set(key, record);
  const [copyOfFront] = Object.values(book.copy).filter(({ transfer }) => transfer === small.front);

  it.each([
    ['an order, with all that hangs on it', `order/${small.order}`, 9],
    ['a transfer, with its copies', `transfer/${small.tag}`, 3],
    ['a copy', `copy/${copyOfFront?.id}`, 1],
    ['an image', `artwork/${id}`, 1],
    ['an entry of no collection', 'other/1', 1],
  ])('is taken without %s, which is named', async (_, key, count) => {
    const read = await unpack(await packedRecords(damagedAt(key, { id: 'damaged', name: 'Named' })));
    if (!read.ok) return expect.fail(read.problem.code);
    const aside = new Set(read.value.setAside.map((each) => each.key));
    expect([aside.has(key), aside.size <= count]).toEqual([true, true]);
    expect(read.value.setAside.find((each) => each.key === key)?.name).toBe('Named');
    const left = [...records].filter(([own]) => !aside.has(own));
    expect(recordsOf(read.value.book)).toEqual(new Map(left));
  });

  it('is taken with each setting that can be read, the others being those of a new shop', async () => {
    const bad = { ...settingsOf(book), currency: '!!!', unit: 'in' };
    const read = await unpack(await packedRecords(damagedAt('settings/shop', bad)));
    expect(read).toMatchObject({ ok: true, value: { fellBack: ['currency'], setAside: [] } });
    expect(read.ok && settingsOf(read.value.book)).toMatchObject({ unit: 'in', currency: 'USD' });
    const without = await unpack(
      await packedRecords(new Map([...records].filter(([key]) => !key.startsWith('settings/')))),
    );
    expect(without.ok && without.value.fellBack).toContain('language');
  });

  it('is taken without an image that is missing, or was changed, which is named', async () => {
    const { [`artwork/${id}`]: _, ...without } = unzipSync(whole.bytes);
    const changed = repacked((parts) => ({ ...parts, [`artwork/${id}`]: strToU8('something else') }));
    for (const bytes of [zipSync(without), changed]) {
      const read = await unpack(bytes);
      expect(read).toMatchObject({ ok: true, value: { book, missing: [id] } });
      expect(read.ok && read.value.artwork.size).toBe(0);
    }
  });
});

describe('a file', () => {
  const bookJson = (version: number, records: object = {}) =>
    zipSync({ 'book.json': strToU8(JSON.stringify({ format: 'rollwright backup', version, records })) });
  const longName = {
    ...Object.values(book.order)[0],
    id: 'long',
    name: Array.from({ length: 300_000 }, (_, number) => number).join(),
  };
  const records = Object.fromEntries(recordsOf(book));

  it.each([
    ['what is no zip', strToU8('order,transfer'), { code: 'not-backup' }],
    ['an empty one', new Uint8Array(), { code: 'not-backup' }],
    ['a zip of something else', zipSync({ 'a.txt': strToU8('a') }), { code: 'not-backup' }],
    ['one of a newer version', bookJson(MODEL_VERSION + 1), { code: 'newer' }],
    ['one of which no record can be read', bookJson(18, { 'order/a': { id: 'a' } }), { code: 'damaged' }],
    ['one whose list of parts was taken out', bookJson(MODEL_VERSION, records), { code: 'damaged' }],
    [
      'one with a name of 2 MB',
      bookJson(18, { ...records, 'order/long': longName }),
      { code: 'too-much', of: 'text' },
    ],
    ['one cut off', whole.bytes.slice(0, 300), { code: 'damaged' }],
  ])('is refused where it is %s', async (_, bytes, problem) => {
    expect(await problemOf(bytes)).toEqual(problem);
  });

  it('is refused where its book was changed and packed anew', async () => {
    const moved = writeKept(recordsOf({ ...book, order: {} }));
    expect(await problemOf(repacked((parts) => ({ ...parts, 'book.json': strToU8(moved) })))).toEqual({
      code: 'damaged',
    });
  });

  it('of an earlier version is taken without a list of its images, and said to be so', async () => {
    const shipped = readFileSync(join(import.meta.dirname, '../model/books/version-12.json'), 'utf8');
    const old = JSON.parse(shipped);
    const read = await unpack(bookJson(old.version, old.records));
    expect(read).toMatchObject({ ok: true, value: { isVerified: false } });
  });

  it('that would unpack to gigabytes is refused before it is unpacked', async () => {
    const zeros = zipSync({ 'book.json': new Uint8Array(40_000_000) });
    // The directory says how large it would be; one that says 3 GB is refused by that alone.
    expect(await problemOf(zeros)).toEqual({ code: 'too-much', of: 'ratio' });
    const view = new DataView(zeros.buffer);
    const directory = zeros.length - 22 - 46 - 'book.json'.length;
    view.setUint32(directory + 24, 3_000_000_000, true);
    expect(await problemOf(zeros)).toEqual({ code: 'too-much', of: 'book' });
    // One that lies about it is unpacked no further than it says.
    view.setUint32(directory + 24, 1000, true);
    expect(await problemOf(zeros)).toEqual({ code: 'damaged' });
  });
});
