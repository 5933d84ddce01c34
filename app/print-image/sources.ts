import { useEffect, useState } from 'react';
import type { Book } from '../../src/model';
import type { ImageSource } from '../../src/output/print-image/browser';
import { loadArtworkFile } from '../store/artwork';

/** The artwork at hand, by id; `null` while it is looked for. An id that is not there has lost its file. */
export type Sources = ReadonlyMap<string, ImageSource> | null;

/** Finds the files of artwork that a run is printed from. Nothing is read of them yet. */
export function useSources(artwork: Book['artwork'], ids: readonly string[]): Sources {
  const [sources, setSources] = useState<Sources>(null);
  const wanted = ids.join(' ');
  useEffect(() => {
    let current = true;
    const find = async () => {
      const found = new Map<string, ImageSource>();
      for (const id of wanted.split(' ')) {
        const record = artwork[id];
        const file = record?.trim ? await loadArtworkFile(id).catch(() => null) : null;
        if (record?.trim && file) {
          const { kind, pixels, trim } = record;
          found.set(id, { id, kind, file, pixels, trim });
        }
      }
      if (current) setSources(found);
    };
    void find();
    return () => {
      current = false;
    };
  }, [artwork, wanted]);
  return sources;
}

/** Bytes of a pixel of a drawing: mostly flat colours. */
const DRAWN = 0.3;
/** A photograph grows when it is no longer stored as one. */
const LOSSLESS: Readonly<Record<Exclude<ImageSource['kind'], 'svg' | 'pdf'>, number>> = {
  png: 1,
  webp: 2.5,
  jpeg: 6,
};

/** About how many bytes the pixels of a copy take, by how densely its file is packed. */
export function bytesOf(source: ImageSource, pixels: number): number {
  const { kind, file, trim } = source;
  return kind === 'svg' || kind === 'pdf'
    ? DRAWN * pixels
    : (LOSSLESS[kind] * file.size * pixels) / (trim.width * trim.height);
}
