import { acrossMap } from '../../cutting';
import type { LaidCopy, LaidRun } from '../../layout';
import type { Span } from '../../packing';
import { toMm } from '../../units';
import type { Box } from './marks';
import type { FilmPage } from './plan';
import type { Sheet } from './sheet';
import type { Measure } from './text';
import type { CutMapWords } from './words';

/** All that a page of film is drawn from. */
export interface FilmScene {
  readonly run: LaidRun;
  readonly mirrored: boolean;
  readonly words: CutMapWords;
  readonly measure: Measure;
  readonly sheet: Sheet;
  readonly scale: number;
  readonly page: FilmPage;
  /** Page numbers and the letter of the strip they share; `null` where the run begins or ends. */
  readonly before: Neighbour | null;
  readonly after: Neighbour | null;
}

export interface Neighbour {
  readonly page: number;
  readonly strip: (Span & { readonly letter: string }) | null;
}

/** A place along the film, on the page. */
export const downPage = ({ sheet, scale, page }: FilmScene, along: number): number =>
  sheet.filmTop + (along - page.from) / 1000 / scale;

export const filmRight = ({ sheet, scale, run }: FilmScene): number =>
  sheet.filmLeft + toMm(run.film.width) / scale;

/** What of a copy is on this page. */
export function copyBox(scene: FilmScene, copy: LaidCopy): Box {
  const { sheet, scale, page, run, mirrored } = scene;
  const from = Math.max(copy.y, page.from);
  const to = Math.min(copy.y + copy.length, page.to);
  return {
    x: sheet.filmLeft + acrossMap(mirrored, run.film.width, copy) / 1000 / scale,
    y: downPage(scene, from),
    width: toMm(copy.width) / scale,
    height: (to - from) / 1000 / scale,
  };
}
