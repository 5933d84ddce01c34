import { acrossMap } from '../../cutting';
import type { LaidRun } from '../../layout';
import type { Room } from '../../outlines';
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

/** A place across the film, on the page: the near edge of what is so wide, as the map shows it. */
export const acrossPage = ({ sheet, scale, run, mirrored }: FilmScene, x: number, width = 0): number =>
  sheet.filmLeft + acrossMap(mirrored, run.film.width, { x, width }) / 1000 / scale;

/** What of a box on the film is on this page; one beyond it has no height. */
export function pageBox(scene: FilmScene, { x, y, width, length }: Room): Box {
  const { page, scale } = scene;
  const from = Math.min(Math.max(y, page.from), page.to);
  const to = Math.max(from, Math.min(y + length, page.to));
  return {
    x: acrossPage(scene, x, width),
    y: downPage(scene, from),
    width: width / 1000 / scale,
    height: (to - from) / 1000 / scale,
  };
}
