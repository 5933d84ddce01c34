import { expose } from 'comlink';
import { fail, ok } from '../../../units';
import { nextTask } from '../../../units/browser/next-task';
import {
  boxesWithin,
  type CopyBox,
  composeRows,
  createTileStore,
  DiskFull,
  lyingTile,
  type MarkBox,
  type PrintImage,
  stripRows,
  type Tile,
  type TileStore,
  tileKey,
  tilesByArtwork,
} from '..';
import { chosenFile, privateFile } from './image-worker/files';
import type {
  DrawnBand,
  ImageJob,
  ImageProblem,
  ImageSource,
  ImageTarget,
  Printer,
} from './image-worker/job';
import { markPixels } from './image-worker/mark';
import { createPdfWriter } from './image-worker/pdf-writer';
import { createPngWriter, type StripWriter } from './image-worker/png-writer';
import type { Sink } from './image-worker/sink';
import { picturesOf } from './image-worker/source';
import { createTiffWriter } from './image-worker/tiff-writer';
import { createWhiteWriter, together } from './image-worker/white-writer';

/** An artwork that failed, on its way to the caller. */
class Undecodable extends Error {
  readonly artwork: string;
  constructor(artwork: string) {
    super('an artwork cannot be decoded');
    this.artwork = artwork;
  }
}

class Stopped extends Error {}

let stopped = false;

/** Between two strips, so many milliseconds apart, progress is told and messages are heard: to stop, for one. */
const LISTEN_EVERY = 100;

/** Sees that the tiles that rows up to `row` need are made; an artwork's all at once, as it is decoded once. */
async function makeTiles(
  waiting: Map<string, Tile[]>,
  row: number,
  sources: ReadonlyMap<string, ImageSource>,
  store: TileStore,
  drawnBand: DrawnBand,
): Promise<void> {
  for (const [artwork, tiles] of waiting) {
    if (tiles.every(({ needed }) => needed >= row)) continue;
    waiting.delete(artwork);
    const source = sources.get(artwork);
    if (!source) continue;
    const sizes = new Map(tiles.map(({ upright }) => [`${upright.width} ${upright.height}`, upright]));
    const pictures = await picturesOf(source, [...sizes.values()], drawnBand).catch(() => {
      throw new Undecodable(artwork);
    });
    [...sizes.values()].forEach((size, index) => {
      const picture = pictures[index];
      for (const tile of tiles) {
        if (!picture || tile.upright.width !== size.width || tile.upright.height !== size.height) continue;
        const { width, pixels } = lyingTile(picture, tile);
        store.put(tile, width, pixels);
      }
    });
  }
}

const sinkOf = ({ kind, handle }: ImageTarget): Promise<Sink> =>
  kind === 'chosen' ? chosenFile(handle) : privateFile(handle);

/** Writes an image in its form, with its white. */
async function writerOf({
  image,
  target,
  form,
  title,
  white,
  whiteTarget,
}: ImageJob['images'][number]): Promise<StripWriter> {
  const sink = await sinkOf(target);
  switch (form) {
    case 'pdf':
      return createPdfWriter(image, sink, title, white);
    case 'tiff':
      return createTiffWriter(image, sink, white);
    case 'png': {
      const png = await createPngWriter(image, sink);
      if (!white || !whiteTarget) return png;
      return together(png, await createWhiteWriter(image, await sinkOf(whiteTarget), white.choke));
    }
  }
}

/** Composes an image strip by strip. `before`: rows of the images that went before it. */
async function compose(
  image: PrintImage,
  writer: StripWriter,
  store: TileStore,
  before: number,
  prepare: (row: number) => Promise<void>,
  onRow: (row: number) => void,
): Promise<void> {
  const { width, height, copies, marks } = image;
  const rows = stripRows(image);
  const buffer = new Uint32Array(width * rows);
  const drawn = new Map<MarkBox, Uint32Array>();
  const boxes: (CopyBox | MarkBox)[] = [...copies, ...marks];
  let heard = performance.now();
  for (let from = 0; from < height; from += rows) {
    const count = Math.min(rows, height - from);
    await prepare(before + from + count);
    for (const mark of boxesWithin(marks, from, count)) {
      if (!drawn.has(mark)) drawn.set(mark, markPixels(mark));
    }
    const strip = buffer.subarray(0, width * count);
    composeRows(strip, width, from, boxes, (box, first, some) =>
      'copy' in box
        ? store.rows(tileKey(box), first, some)
        : (drawn.get(box)?.subarray(first * box.width, (first + some) * box.width) ?? null),
    );
    await writer.strip(strip);
    for (const mark of drawn.keys()) if (mark.y + mark.height <= from + count) drawn.delete(mark);
    store.release(before + from + count);
    if (performance.now() - heard > LISTEN_EVERY) {
      onRow(from + count);
      await nextTask();
      heard = performance.now();
    }
    if (stopped) throw new Stopped();
  }
}

function problemOf(error: unknown): ImageProblem {
  if (error instanceof Stopped) return { code: 'stopped' };
  if (error instanceof Undecodable) return { code: 'artwork', artwork: error.artwork };
  const isFull =
    error instanceof DiskFull || (error instanceof DOMException && error.name === 'QuotaExceededError');
  return { code: isFull ? 'disk-full' : 'not-written' };
}

const printer: Printer = {
  async write({ images, sources, scratch }, onProgress, drawnBand) {
    const waiting = tilesByArtwork(images.map(({ image }) => image));
    const byId = new Map(sources.map((source) => [source.id, source]));
    const store = createTileStore((await scratch?.createSyncAccessHandle()) ?? null);
    const total = images.reduce((sum, { image }) => sum + image.width * image.height, 0);
    let done = 0;
    let before = 0;
    try {
      for (const job of images) {
        const { image } = job;
        const writer = await writerOf(job);
        const prepare = (row: number) => makeTiles(waiting, row, byId, store, drawnBand);
        try {
          await compose(image, writer, store, before, prepare, (row) =>
            onProgress((done + row * image.width) / total),
          );
          await writer.finish();
        } catch (error) {
          await writer.abandon().catch(() => undefined);
          throw error;
        }
        before += image.height;
        done += image.height * image.width;
      }
      return ok(undefined);
    } catch (error) {
      return fail(problemOf(error));
    } finally {
      store.close();
    }
  },
  stop() {
    stopped = true;
  },
};

expose(printer);
