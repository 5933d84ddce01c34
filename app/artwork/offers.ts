import { type Finding, type Limits, largestSpeck, strokeLimit } from '../../src/artwork';
import type { Artwork, Mend } from '../../src/model';
import { hex } from '../words/format';

/** Where a knock-out starts; the slider takes it from there. Compression leaves noise in a ground, all else keeps it plain. */
const GROUND_TOLERANCE: Readonly<Record<Exclude<Artwork['kind'], 'svg' | 'pdf'>, number>> = {
  jpeg: 24,
  webp: 24,
  png: 8,
};
const BLACK_TOLERANCE = 40;

/** How a finding in a kind of file can be mended here; `null` where it cannot: a drawing has no pixels of its own. */
export function offerOf(finding: Finding, limits: Limits, kind: Artwork['kind']): Mend | null {
  if (kind === 'svg' || kind === 'pdf') return null;
  switch (finding.code) {
    case 'ground':
      return {
        kind: 'knock-out',
        colour: hex(finding.colour),
        tolerance: GROUND_TOLERANCE[kind],
        reach: 'from-edge',
      };
    case 'black-on-black':
      return { kind: 'knock-out', colour: '#000000', tolerance: BLACK_TOLERANCE, reach: 'everywhere' };
    case 'strays':
    case 'specks':
      return {
        kind: 'take-off',
        largest: largestSpeck(strokeLimit(limits)),
        reach: finding.code === 'strays' ? 'strays' : 'everywhere',
      };
    case 'fringe':
      return { kind: 'defringe', ground: finding.ground };
    case 'thin-strokes':
    case 'white-lost':
      return { kind: 'thicken', to: strokeLimit(limits) };
    default:
      return null;
  }
}
