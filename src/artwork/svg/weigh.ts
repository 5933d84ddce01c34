import { fail, ok, type Result } from '../../units';
import { Cursor, type Meter } from './cursor';
import { piecesOf } from './markup';
import { expand, type Weight } from './parts';
import { preambleOf } from './preamble';
import { Refused, type WeightProblem } from './refusal';
import { DEEPEST, Scales } from './scales';

/** So many circles are laid out in some seconds on one core. */
const MOST_ELEMENTS = 100_000;
/** Each may take as long as a blur of the whole picture. */
const MOST_STEPS = 50;
/**
 * Counts what drawing an SVG takes before it is drawn, in two looks over its text that only go on. What cannot be told
 * exactly is counted as too much rather than too little.
 * @param meter counts the signs that were looked at
 */
export function weighSvg(text: string, meter: Meter = { steps: 0 }): Result<Weight, WeightProblem> {
  try {
    const { plain, rules } = preambleOf(new Cursor(text, meter));
    const scales = new Scales(rules, plain);
    for (const piece of piecesOf(new Cursor(text, meter))) {
      if (piece.kind === 'open') scales.enter(piece);
      if (piece.kind === 'close') scales.leave();
      if (piece.kind === 'text') scales.text(piece.text);
    }
    const weight = expand(scales.root, scales.parts, DEEPEST);
    if (typeof weight === 'string') return fail('nested');
    if (weight.elements > MOST_ELEMENTS) return fail('many-elements');
    return weight.steps > MOST_STEPS ? fail('many-filters') : ok(weight);
  } catch (error) {
    if (error instanceof Refused) return fail(error.problem);
    throw error;
  }
}
