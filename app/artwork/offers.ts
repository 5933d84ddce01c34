import { type Finding, type Limits, largestSpeck, strokeLimit } from '../../src/artwork';
import type { Mend } from '../../src/model';
import { hex } from '../words/format';

/** Where a knock-out starts; the slider takes it from there. */
const GROUND_TOLERANCE = 24;
const BLACK_TOLERANCE = 40;

/** How a finding can be mended here; `null` where it cannot. */
export function offerOf(finding: Finding, limits: Limits): Mend | null {
  switch (finding.code) {
    case 'ground':
      return {
        kind: 'knock-out',
        colour: hex(finding.colour),
        tolerance: GROUND_TOLERANCE,
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
    case 'thin-strokes':
    case 'white-lost':
      return { kind: 'thicken', to: strokeLimit(limits) };
    default:
      return null;
  }
}
