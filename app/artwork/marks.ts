import {
  type ArtworkCheck,
  type Finding,
  type Limits,
  type MaskRuns,
  type Spot,
  whitePlaces,
} from '../../src/artwork';

/** Where in an artwork something was found: its pixels where they are known, and places to ring. */
export interface Marks {
  readonly where: MaskRuns | null;
  readonly places: readonly Spot[];
}

/** What is drawn over the artwork for a finding; `null` for one that has no place. */
export function marksOf(check: ArtworkCheck, code: Finding['code'], limits: Limits): Marks | null {
  const { strokes, specks, openings, screens, seeThrough, strays } = check;
  switch (code) {
    case 'thin-strokes':
      return {
        where: strokes.where,
        places: strokes.list.filter(({ thickness }) => thickness < limits.stroke),
      };
    case 'white-lost':
      return { where: strokes.where, places: whitePlaces(check, limits).lost };
    case 'thin-white':
      return { where: strokes.where, places: whitePlaces(check, limits).thin };
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
    case 'profile':
      return check.clipped && check.clipped.share > 0 ? { where: check.clipped.where, places: [] } : null;
    case 'see-through':
      return { where: seeThrough.where, places: [] };
    default:
      return null;
  }
}
