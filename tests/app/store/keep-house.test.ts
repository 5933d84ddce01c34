import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import { keepHouse } from '../../../app/store/keep-house';
import { useShop } from '../../../app/store/shop';
import { setArtwork } from '../../../src/editing';
import { type Artwork, emptyBook } from '../../../src/model';
import {
  type ArtworkStore,
  noEpoch,
  openArtworkStore,
  openSnapshots,
  type SnapshotStore,
} from '../../../src/storage';
import { openStore, writeBatch } from '../../../src/storage/database';
import { fence } from '../../../src/storage/epoch';
import { edited, freshIds, NOW, smallBook, smallSettings } from '../../editing/book';

const idOf = (letter: string) => letter.repeat(64) as Artwork['id'];
const [original, knockedOut, placed, unused] = ['a', 'b', 'c', 'd'].map(idOf);
const artworkOf = (id: Artwork['id'], madeFrom: Artwork['madeFrom'] = null): Artwork => ({
  id,
  fileName: `${id}.png`,
  kind: 'png',
  pixels: { width: 10, height: 10 },
  density: null,
  trim: null,
  madeFrom,
  outline: null,
  outlinedBy: 0,
  changed: NOW,
});

let last = 0;
let artwork: ArtworkStore;
let snapshots: SnapshotStore;
let database: string;

beforeEach(async () => {
  last += 1;
  database = `house-snapshots-${last}`;
  const epoch = noEpoch();
  artwork = openArtworkStore(`house-artwork-${last}`, epoch);
  snapshots = openSnapshots(database, epoch, (at) => at.slice(0, 10), smallSettings);
  await fence(epoch.databases, 1);
  epoch.current = 1;
  for (const id of ['a', 'b', 'c', 'd'].map(idOf)) await artwork.put(id, new Blob([id]), new Blob());
  useShop.setState({ book: emptyBook, setAside: [] });
});

const here = async () => {
  const files = await Promise.all(
    ['a', 'b', 'c', 'd'].map(async (one) => ((await artwork.file(idOf(one))) ? one : '')),
  );
  return files.join('');
};

/** A book whose transfer has a knock-out and whose place has an image of its own. */
function withImages() {
  const { book, front, order } = smallBook();
  if (!original || !knockedOut || !placed || !unused) throw new Error('no ids');
  const by = { kind: 'knock-out', colour: '#ffffff', tolerance: 20, reach: 'from-edge' } as const;
  const made = { artwork: original, by };
  const width = { width: book.transfer[front]?.width ?? expect.fail(), typed: '100 mm' };
  return edited(book, (draft) => {
    for (const one of [artworkOf(original), artworkOf(placed)]) draft.artwork[one.id] = one;
    setArtwork(draft, front, artworkOf(knockedOut, made), freshIds());
    draft.placement.place = {
      id: 'place' as never,
      order,
      place: 'front',
      on: 'front',
      sizes: {},
      design: 'crest',
      ratio: 1,
      artwork: placed,
      widths: { adult: width, youth: width, toddler: width },
      changed: NOW,
    };
  });
}

describe('keeping house', () => {
  it('lets go of an image that nothing names, and of none that a snapshot needs', async () => {
    await snapshots.take(withImages(), 'before-restoring', NOW);
    await keepHouse(emptyBook, snapshots, artwork);
    expect(await here()).toBe('abc');
  });

  it('lets go of nothing while it cannot be told what a snapshot or a record needs', async () => {
    useShop.setState({
      setAside: [{ key: 'transfer/broken', collection: 'transfer', name: null, lacks: null }],
    });
    await keepHouse(emptyBook, snapshots, artwork);
    expect(await here()).toBe('abcd');
    useShop.setState({ setAside: [] });
    await writeBatch(openStore(database), [[`head/${NOW}`, 'no head']], []);
    await keepHouse(emptyBook, snapshots, artwork);
    expect(await here()).toBe('abcd');
  });

  it('takes the snapshot of the hour where there are orders', async () => {
    await keepHouse(emptyBook, snapshots, artwork);
    expect(await snapshots.list()).toEqual([]);
    await keepHouse(withImages(), snapshots, artwork);
    expect(await snapshots.list()).toMatchObject([{ holds: { why: 'hour', orders: 1, copies: 5 } }]);
  });
});
