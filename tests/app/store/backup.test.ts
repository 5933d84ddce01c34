import { unzipSync, zipSync } from 'fflate';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { saveBackup } from '../../../app/store/backup';
import { bringBack, findBackup, findSnapshot, lacksSomething } from '../../../app/store/bring-back';
import { act, useShop } from '../../../app/store/shop';
import { useView } from '../../../app/store/view';
import type { OpenedArtwork } from '../../../src/artwork/browser';
import { edits, setArtwork } from '../../../src/editing';
import { type Book, type Id, type Opened, settingsOf } from '../../../src/model';
import { bytesOf, unpackBundle } from '../../../src/output/backup';
import { unsummed } from '../../../src/stock';
import type { SnapshotProblem, SnapshotReason } from '../../../src/storage';
import { fail, ok, type Result, UPRIGHT, um } from '../../../src/units';
import { sha256 } from '../../../src/units/browser/sha256';
import { WorkerFailed } from '../../../src/workers/browser';
import { context, edited, smallBook, smallSettings } from '../../editing/book';
import { packed, sourceOf } from '../../output/packed-backup';
import type { waitingCalls } from './calls';

interface Unpacked {
  readonly book: Book;
  readonly artwork: readonly (readonly [string, Blob])[];
}
type Asked = { readonly pack: Unpacked } | { readonly unpack: Blob };

const worker = (await vi.hoisted(async () => (await import('./calls')).waitingCalls())) as ReturnType<
  typeof waitingCalls<Asked, unknown>
>;
vi.mock('../../../src/output/backup/browser', () => {
  const never = () => new AbortController().signal;
  return {
    packBackup: (book: Book, artwork: Unpacked['artwork']) =>
      worker.call({ pack: { book, artwork } }, never()),
    unpackBackup: (unpack: Blob) => worker.call({ unpack }, never()),
  };
});

/** What stands in for the disk, the downloads and the reader of images. */
const outside = vi.hoisted(() => ({
  files: new Map<string, Blob>(),
  downloads: [] as { file: Blob; name: string }[],
  reading: null as Error | null,
  isFull: false,
  snapshots: null as object | null,
}));
vi.mock('../../../app/files/download', () => ({
  download: (file: Blob, name: string) => outside.downloads.push({ file, name }),
}));
vi.mock('../../../src/artwork/browser', () => ({
  openArtwork: async (file: File) => {
    if (outside.reading) throw outside.reading;
    return { ok: true, value: { id: await sha256(await file.arrayBuffer()), file, fileName: file.name } };
  },
}));
vi.mock('../../../app/store/artwork', () => ({
  loadArtworkFile: async (id: string) => outside.files.get(id) ?? null,
  keepArtwork: async ({ id, file }: OpenedArtwork): Promise<Result<null, { code: string }>> => {
    if (outside.isFull) return fail({ code: 'quota' });
    outside.files.set(id, file);
    return ok(null);
  },
}));
vi.mock('../../../app/store/first-book', async () => ({
  firstSettingsNow: (await import('../../editing/book')).smallSettings,
}));
vi.mock('../../../app/store/boot', () => ({ snapshotsNow: () => outside.snapshots }));

interface Taken {
  readonly at: string;
  readonly why: SnapshotReason;
  readonly book: Book;
}

const whole = (book: Book): Opened => ({ book, setAside: [], fellBack: [] });

/** Snapshots in memory; `onTake` comes before each is written. */
function memorySnapshots(onTake: () => void = () => undefined) {
  const taken: Taken[] = [];
  return {
    taken,
    async take(book: Book, why: Taken['why'], at: string) {
      await Promise.resolve();
      onTake();
      taken.push({ at, why, book });
    },
    async read(at: string): Promise<Result<Opened, SnapshotProblem>> {
      const found = taken.find((each) => each.at === at);
      return found ? ok(whole(found.book)) : fail('gone');
    },
  };
}

/** Reads a file, and brings back what was found. */
async function restoreBackup(file: File) {
  const found = await findBackup(file);
  return found.ok ? bringBack(found.value) : found;
}
async function bringSnapshotBack(at: string) {
  const found = await findSnapshot(at);
  return found.ok ? bringBack(found.value) : found;
}

const bytes = new TextEncoder().encode('an image');
const image = await sha256(bytes);
const small = smallBook();
const former = 'f'.repeat(64);
const picture = (id: string) => ({
  id: id as Id<'artwork'>,
  fileName: 'front.png',
  kind: 'png' as const,
  pixels: { width: 10, height: 8 },
  density: null,
  trim: { x: 0, y: 0, width: 10, height: 8 },
  madeFrom: null,
});
/** The shop's book, whose front has an image, and had another. */
const withImage = edited(small.book, (draft) => {
  for (const id of [former, image]) setArtwork(draft, small.front, picture(id), context());
});
const { bytes: bundle } = await packed(withImage, [[image, bytes]]);
const unpack = (content: Uint8Array) => unpackBundle(sourceOf(content), sha256, smallSettings());
const initial = useShop.getState();
const bookNow = () => useShop.getState().book;
const addOrder = (name: string) => act(edits.addOrder({ name, due: null }));
const orders = (book: Book) => Object.values(book.order).map(({ name }) => name);

const at = (call: number) => {
  const own = worker.calls[call];
  if (!own) throw new Error(`only ${worker.calls.length} calls`);
  return own;
};
const asked = (count: number) => vi.waitFor(() => expect(worker.calls).toHaveLength(count));
/** Answers as the worker does. */
async function answer(call: number): Promise<void> {
  const { input } = at(call);
  if ('pack' in input) {
    const files = input.pack.artwork.map(
      async ([id, blob]) => [id, new Uint8Array(await blob.arrayBuffer())] as const,
    );
    const { bytes: content, ...rest } = await packed(input.pack.book, await Promise.all(files));
    at(call).answer({ file: new Blob([content]), ...rest });
    return;
  }
  const content = new Uint8Array(await input.unpack.arrayBuffer());
  const read = await unpack(content);
  if (!read.ok) return at(call).answer(read);
  const images = [...read.value.artwork].map(async ([id, part]) => {
    const own = await bytesOf(sourceOf(content), part);
    return [id, new Blob(own ? [own] : [])];
  });
  at(call).answer(ok({ ...read.value, artwork: await Promise.all(images) }));
}
/** Answers what packs a backup, and what reads it again. */
async function packAndRead(): Promise<void> {
  await answer(0);
  await asked(2);
  await answer(1);
}
/** Brings a file back, from its choice to its end. */
async function restored(content: Uint8Array<ArrayBuffer> = bundle) {
  const done = restoreBackup(new File([content], 'backup.zip'));
  await asked(1);
  await answer(0);
  return done;
}

let snapshots = memorySnapshots();

beforeEach(() => {
  snapshots = memorySnapshots();
  Object.assign(outside, { downloads: [], reading: null, isFull: false, snapshots });
  outside.files.clear();
  worker.calls.length = 0;
  useShop.setState({ ...initial, phase: { kind: 'open' }, book: small.book });
});
afterAll(() => useShop.setState(initial));

describe('a backup that is saved', () => {
  beforeEach(() => {
    useShop.setState({ book: withImage });
    outside.files.set(image, new Blob([bytes])).set(former, new Blob(['of no transfer']));
  });

  it('is one file with the book and the images it names, and its day is noted', async () => {
    const done = saveBackup('backup.zip');
    await asked(1);
    expect(settingsOf(bookNow())?.lastBackup).toBeNull();
    await packAndRead();
    await done;
    expect(outside.downloads.map(({ name }) => name)).toEqual(['backup.zip']);
    const [saved] = outside.downloads;
    const content = new Uint8Array(await (saved?.file ?? new Blob()).arrayBuffer());
    const read = await unpack(content);
    expect(read).toMatchObject({ ok: true, value: { book: withImage } });
    expect(read.ok && [...read.value.artwork.keys()]).toEqual([image]);
    expect(settingsOf(bookNow())?.lastBackup).not.toBeNull();
  });

  it('that cannot be written is neither handed over nor noted', async () => {
    const done = saveBackup('backup.zip');
    await asked(1);
    at(0).fail(new WorkerFailed('broken'));
    await expect(done).rejects.toThrow(WorkerFailed);
    expect(outside.downloads).toEqual([]);
    expect(bookNow()).toBe(withImage);
  });

  it('keeps what was entered meanwhile, and is of the book as it was', async () => {
    const done = saveBackup('backup.zip');
    await asked(1);
    addOrder('Mill');
    await packAndRead();
    await done;
    expect(orders(bookNow())).toContain('Mill');
    const { input } = at(0);
    expect('pack' in input && orders(input.pack.book)).toEqual(['Hill Bakers']);
  });

  it('is not noted in another book that was opened meanwhile', async () => {
    const done = saveBackup('backup.zip');
    await asked(1);
    outside.snapshots = memorySnapshots();
    useShop.setState({ source: 'shop', book: small.book });
    await packAndRead();
    await done;
    expect(outside.downloads).toHaveLength(1);
    expect(settingsOf(bookNow())?.lastBackup).toBeNull();
  });

  it('that reads otherwise than it was written is neither handed over nor noted', async () => {
    const done = saveBackup('backup.zip');
    await asked(1);
    await answer(0);
    await asked(2);
    at(1).answer(ok({ ...whole(withImage), artwork: [], missing: [], isVerified: true, digest: 'another' }));
    expect(await done).toEqual({ ok: false, problem: 'differs' });
    expect(outside.downloads).toEqual([]);
    expect(bookNow()).toBe(withImage);
  });

  it('names the images that are missing in it', async () => {
    outside.files.clear();
    const done = saveBackup('backup.zip');
    await asked(1);
    await packAndRead();
    expect(await done).toEqual({ ok: true, value: ['front.png'] });
  });

  describe('where the browser asks for a place', () => {
    const written: Blob[] = [];
    const place = (read: (file: Blob) => Blob) => ({
      createWritable: async () => ({
        write: async (file: Blob) => written.push(file),
        close: async () => undefined,
      }),
      getFile: async () => read(written.at(-1) ?? new Blob()),
    });
    const ask = (answered: () => Promise<unknown>) =>
      vi.stubGlobal('window', { showSaveFilePicker: answered });
    beforeEach(() => {
      written.length = 0;
    });
    afterEach(() => vi.unstubAllGlobals());

    it('is written there, read again from there, and noted', async () => {
      ask(async () => place((file) => file));
      const done = saveBackup('backup.zip');
      await asked(1);
      await packAndRead();
      expect(await done).toEqual({ ok: true, value: [] });
      expect([written.length, outside.downloads.length]).toEqual([1, 0]);
      expect(settingsOf(bookNow())?.lastBackup).not.toBeNull();
    });

    it('is not noted where the disk gives back other bytes', async () => {
      ask(async () => place((file) => file.slice(0, 400)));
      const done = saveBackup('backup.zip');
      await asked(1);
      await packAndRead();
      expect(await done).toEqual({ ok: false, problem: 'differs' });
      expect(settingsOf(bookNow())?.lastBackup).toBeNull();
    });

    it('is not packed where no place was chosen', async () => {
      ask(async () => Promise.reject(new DOMException('dismissed', 'AbortError')));
      expect(await saveBackup('backup.zip')).toEqual({ ok: false, problem: 'dismissed' });
      expect(worker.calls).toEqual([]);
    });
  });
});

describe('a backup that is brought back', () => {
  it('takes the place of what was here, of which a snapshot is kept, and keeps its images', async () => {
    addOrder('Mill');
    const before = bookNow();
    expect(await restored()).toEqual({ ok: true, value: undefined });
    expect(bookNow()).toEqual(withImage);
    expect(await outside.files.get(image)?.text()).toBe('an image');
    expect(snapshots.taken).toMatchObject([{ why: 'before-restoring', book: before }]);
    const [{ at: when } = { at: '' }] = snapshots.taken;
    expect(await bringSnapshotBack(when)).toMatchObject({ ok: true });
    expect(bookNow()).toEqual(before);
  });

  it.each([
    { what: 'what is no zip', content: new TextEncoder().encode('order,transfer'), problem: 'not-backup' },
    { what: 'one cut off', content: bundle.slice(0, 300), problem: 'damaged' },
  ])('changes nothing where it is $what', async ({ content, problem }) => {
    expect(await restored(content)).toMatchObject({ ok: false, problem: { code: problem } });
    expect(bookNow()).toBe(small.book);
    expect([snapshots.taken, [...outside.files]]).toEqual([[], []]);
  });

  it.each([{ why: 'missing' as const }, { why: 'broken' as const }])(
    'changes nothing where the worker that opens it is $why',
    async ({ why }) => {
      const done = restoreBackup(new File([bundle], 'backup.zip'));
      await asked(1);
      at(0).fail(new WorkerFailed(why));
      await expect(done).rejects.toThrow(WorkerFailed);
      expect(bookNow()).toBe(small.book);
      expect(snapshots.taken).toEqual([]);
    },
  );

  it('changes nothing where the worker that reads its images fails', async () => {
    outside.reading = new WorkerFailed('missing');
    await expect(restored()).rejects.toThrow(WorkerFailed);
    expect(bookNow()).toBe(small.book);
    expect(snapshots.taken).toEqual([]);
  });

  it('is no backup where it cannot be read at all', async () => {
    const done = restoreBackup(new File([bundle], 'backup.zip'));
    await asked(1);
    at(0).fail(new DOMException('gone from the disk', 'NotReadableError'));
    expect(await done).toEqual({ ok: false, problem: { code: 'not-backup' } });
  });

  it.each([
    {
      what: 'there is no room for its images',
      before: () => Object.assign(outside, { isFull: true }),
    },
    {
      what: 'there is no room for a snapshot',
      before: () => {
        outside.snapshots = memorySnapshots(() => {
          throw new DOMException('full', 'QuotaExceededError');
        });
      },
    },
    { what: 'there are no snapshots', before: () => Object.assign(outside, { snapshots: null }) },
    { what: 'another tab writes', before: () => useShop.setState({ follows: true }) },
    {
      what: 'another tab begins to write meanwhile',
      before: () => {
        outside.snapshots = memorySnapshots(() => useShop.setState({ follows: true }));
      },
    },
  ])('is not kept, and changes nothing, where $what', async ({ before }) => {
    before();
    expect(await restored()).toEqual({ ok: false, problem: 'not-kept' });
    expect(bookNow()).toBe(small.book);
  });

  it('keeps in a snapshot what was entered up to the end', async () => {
    let isFirst = true;
    snapshots = memorySnapshots(() => {
      if (isFirst) addOrder('Mill');
      isFirst = false;
    });
    outside.snapshots = snapshots;
    expect(await restored()).toMatchObject({ ok: true });
    expect(bookNow()).toEqual(withImage);
    const last = snapshots.taken.at(-1);
    expect(last && orders(last.book)).toContain('Mill');
  });

  it('does not come into another book that was opened meanwhile', async () => {
    const done = restoreBackup(new File([bundle], 'backup.zip'));
    await asked(1);
    const others = memorySnapshots();
    outside.snapshots = others;
    const other = edited(small.book, (draft) => {
      draft.order = {};
    });
    useShop.setState({ source: 'shop', book: other });
    await answer(0);
    expect(await done).toEqual({ ok: false, problem: 'not-kept' });
    expect(bookNow()).toBe(other);
    expect([snapshots.taken, others.taken]).toEqual([[], []]);
  });

  it('twice at once is there once, what was before each a snapshot', async () => {
    addOrder('Mill');
    const before = bookNow();
    const first = restoreBackup(new File([bundle], 'backup.zip'));
    const { bytes: other } = await packed(small.book);
    const second = restoreBackup(new File([other], 'other.zip'));
    await asked(2);
    await answer(1);
    expect(await second).toMatchObject({ ok: true });
    await answer(0);
    expect(await first).toMatchObject({ ok: true });
    expect(bookNow()).toEqual(withImage);
    expect(snapshots.taken.map(({ book }) => book)).toEqual([before, small.book]);
  });
});

describe('a backup without some of its parts', () => {
  const changed = zipSync({ ...unzipSync(bundle), [`artwork/${image}`]: new Uint8Array([1]) });
  const found = async () => {
    const done = findBackup(new File([changed], 'backup.zip'));
    await asked(1);
    await answer(0);
    const read = await done;
    return read.ok ? read.value : expect.fail(read.problem.code);
  };

  it('names an image that was changed before anything is touched, and comes back without it', async () => {
    const read = await found();
    expect([read.missing, lacksSomething(read)]).toEqual([['front.png'], true]);
    expect([bookNow(), snapshots.taken.length, outside.files.size]).toEqual([small.book, 0, 0]);
    expect(await bringBack(read)).toMatchObject({ ok: true });
    expect([bookNow(), outside.files.size]).toEqual([withImage, 0]);
  });

  it('lacks nothing where the image is here', async () => {
    outside.files.set(image, new Blob([bytes]));
    expect(lacksSomething(await found())).toBe(false);
  });
});

describe('a snapshot', () => {
  it('names the images that are no longer here', async () => {
    await snapshots.take(withImage, 'day', 'then');
    const read = await findSnapshot('then');
    expect(read.ok && read.value.missing).toEqual(['front.png']);
  });

  it('is brought back with copies that lie over each other off the film', async () => {
    const over = edited(small.book, (draft) => {
      const [run] = Object.values(draft.run);
      const place = { x: um(20_000), y: um(20_000), angle: UPRIGHT, pinned: false };
      for (const copy of Object.values(draft.copy))
        if (run) draft.copy[copy.id] = { ...copy, state: 'placed', run: run.id, place };
    });
    await snapshots.take(over, 'day', 'then');
    expect(await bringSnapshotBack('then')).toMatchObject({ ok: true });
    const lying = Object.values(bookNow().copy).filter(({ place }) => place !== null);
    expect(lying.length).toBeLessThan(2);
  });

  it('that is not there, or of another book by now, changes nothing', async () => {
    expect(await bringSnapshotBack('2026-11-25T08:00:00.000Z')).toEqual({ ok: false, problem: 'gone' });
    await snapshots.take(withImage, 'day', '2026-11-25T08:00:00.000Z');
    const done = bringSnapshotBack('2026-11-25T08:00:00.000Z');
    outside.snapshots = memorySnapshots();
    expect(await done).toEqual({ ok: false, problem: 'not-kept' });
    expect(bookNow()).toBe(small.book);
  });

  it('does not come back where what is here cannot be kept', async () => {
    const full = memorySnapshots(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    full.taken.push({ at: 'then', why: 'day', book: withImage });
    outside.snapshots = full;
    expect(await bringSnapshotBack('then')).toEqual({ ok: false, problem: 'not-kept' });
    expect(bookNow()).toBe(small.book);
  });
});

describe('a backup of a film whose ledger does not sum to what is left of it', () => {
  const wrong: Book = {
    ...small.book,
    film: Object.fromEntries(
      Object.entries(small.book.film).map(([id, film]) => [
        id,
        film.kind === 'roll' ? { ...film, lengthLeft: um(film.lengthLeft + 1_000_000) } : film,
      ]),
    ),
  };

  it('is told before anything is touched, and comes back with an entry of the difference', async () => {
    const { bytes: own } = await packed(wrong);
    const done = findBackup(new File([own], 'backup.zip'));
    await asked(1);
    await answer(0);
    const read = await done;
    if (!read.ok) throw new Error(read.problem.code);
    expect(lacksSomething(read.value)).toBe(true);
    expect([bookNow(), snapshots.taken.length]).toEqual([small.book, 0]);
    useView.setState({ notices: [] });
    expect(await bringBack(read.value)).toMatchObject({ ok: true });
    expect(bookNow().film).toEqual(wrong.film);
    expect(unsummed(bookNow())).toEqual([]);
    expect(useView.getState().notices.map(({ text }) => text)).toEqual([
      expect.stringMatching(/did not add up/),
    ]);
  });
});
