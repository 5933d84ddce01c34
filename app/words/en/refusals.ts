import type { Refusal } from '../../../src/layout';
import type { UnplacedReason } from '../../../src/packing';
import type { Turning } from '../../../src/units';
import { rulerLength, type Ways } from '../format';

export const unplaced: Record<UnplacedReason, string> = {
  'too-wide': 'is wider than the printable film, even where it may be turned',
  'too-long': 'is longer than a span or the film allows',
  'no-room': 'found no room: the roll is too short for all of them',
};

const turned: Record<Turning, string> = {
  fixed: '“May turn” in Orders does not let this transfer turn',
  half: '“May turn” in Orders lets this transfer turn half round only',
  quarter: '“May turn” in Orders lets this transfer turn by quarters only',
  any: 'it may lie at any angle',
};

export function refusal(problem: Refusal, ways: Ways): string {
  switch (problem.code) {
    case 'outside-left':
    case 'outside-right':
      return 'there it would reach into the unprintable side of the film';
    case 'before-lead':
      return 'there it would reach into the leading margin';
    case 'past-end':
      return 'the film is not that long there';
    case 'no-print':
      return 'that film may not be used';
    case 'too-close':
      return `there it would come closer than ${rulerLength(problem.gap, ways)} to ${problem.other.order.code} ${problem.other.number}`;
    case 'no-knife-line':
      return `no straight cut would fit, and spans may be no longer than ${rulerLength(problem.spanMax, ways)}`;
    case 'may-not-turn':
      return turned[problem.turning];
  }
}
