import type { ArtworkCheck, Finding, Limits, MaskRuns, Spot } from '../../src/artwork';

/** Where in an artwork something was found: its pixels where they are known, and places to ring. */
export interface Marks {
  readonly where: MaskRuns | null;
  readonly places: readonly Spot[];
}

/** What is drawn over the artwork for a finding; `null` for one that has no place. */
export function marksOf(check: ArtworkCheck, code: Finding['code'], { choke, stroke }: Limits): Marks | null {
  const { strokes, specks, openings, screens, seeThrough, strays } = check;
  switch (code) {
    case 'thin-strokes':
      return { where: strokes.where, places: strokes.list.filter(({ thickness }) => thickness < stroke) };
    case 'white-lost':
      return { where: strokes.where, places: strokes.list.filter(({ thickness }) => thickness <= 2 * choke) };
    case 'specks':
      return { where: strokes.where, places: specks.list };
    case 'screen-dots':
      return screens.dots && { where: strokes.where, places: screens.dots.list };
    case 'screen-holes':
      return screens.holes && { where: openings.where, places: screens.holes.list };
    case 'strays':
      return strays && { where: null, places: strays.list };
    case 'openings':
      return { where: openings.where, places: openings.list };
    case 'see-through':
      return { where: seeThrough.where, places: [] };
    default:
      return null;
  }
}
