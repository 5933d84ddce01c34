import { useEffect, useState } from 'react';
import type { LaidRun } from '../../src/layout';
import { freeLater } from '../files/object-url';
import { loadThumbnail } from '../store/artwork';

/** A thumbnail as the page shows it and as a PDF embeds it. */
export interface Thumbnail {
  readonly url: string;
  readonly file: Blob;
}

const none: ReadonlyMap<string, Thumbnail> = new Map();

/** The thumbnails of all artwork on a run, by its id; none for `null`. */
export function useThumbnails(run: LaidRun | null): ReadonlyMap<string, Thumbnail> {
  const [thumbnails, setThumbnails] = useState(none);
  const wanted = [...new Set(run?.copies.flatMap(({ transfer }) => transfer.artwork ?? []))].sort().join(' ');
  useEffect(() => {
    let current = true;
    const made: Thumbnail[] = [];
    const load = async () => {
      const loaded = new Map<string, Thumbnail>();
      for (const id of wanted.split(' ').filter(Boolean)) {
        const file = await loadThumbnail(id).catch(() => null);
        if (!file || !current) continue;
        const thumbnail = { url: URL.createObjectURL(file), file };
        made.push(thumbnail);
        loaded.set(id, thumbnail);
      }
      if (current) setThumbnails(loaded);
    };
    void load();
    return () => {
      current = false;
      for (const { url } of made) freeLater(url);
    };
  }, [wanted]);
  return wanted === '' ? none : thumbnails;
}
