import { type Finding, type Limits, largestSpeck, mostLines, strokeLimit } from '../../src/artwork';
import type { Artwork, Mend } from '../../src/model';
import { hex } from '../words/format';

/** Where a knock-out starts; the slider takes it from there. Compression leaves noise in a ground, all else keeps it plain. */
const GROUND_TOLERANCE: Readonly<Record<Exclude<Artwork['kind'], 'svg' | 'pdf'>, number>> = {
  jpeg: 24,
  webp: 24,
  png: 8,
};
const BLACK_TOLERANCE = 40;

/** A screen whose smallest dots hold powder and white, as fine as leaves them half as much room again. */
export function screenOf(limits: Limits): Extract<Mend, { kind: 'screen' }> {
  const least = strokeLimit(limits);
  return { kind: 'screen', lines: Math.max(5, Math.floor(mostLines(least) / 1.25)), least };
}

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
    case 'thin-white':
      return { kind: 'thicken', to: strokeLimit(limits) };
    case 'see-through':
      return { kind: 'threshold', from: 0.5 };
    default:
      return null;
  }
}
