import type { Film, Progress } from '../model';
import { checkPlace, keepsGapBy, type PlaceProblem } from '../packing';
import { type Micrometres, mayLieAt, type Turning, um } from '../units';
import { groundOf, sheetAt, sheetStart, sheetsPrinted } from './film-shape';
import type { LaidCopy, LaidRun } from './laid';

/** Why a copy may not lie where it is held. */
export type Refusal =
  | { readonly code: Exclude<PlaceProblem['code'], 'too-close'> }
  /** It may be turned so far, and lies at another angle. */
  | { readonly code: 'may-not-turn'; readonly turning: Turning }
  | { readonly code: 'too-close'; readonly other: LaidCopy; readonly gap: Micrometres }
  | { readonly code: 'no-knife-line'; readonly spanMax: Micrometres };

/** Why one copy may not lie on a film among others; none, if it may. */
export function* placeRefusals(
  film: Film,
  progress: Progress,
  copy: LaidCopy,
  others: readonly LaidCopy[],
): Generator<Refusal> {
  if (!mayLieAt(copy.transfer.turn, copy.angle)) yield { code: 'may-not-turn', turning: copy.transfer.turn };
  const sheet = sheetAt(film, copy.y);
  if (film.kind === 'sheets') {
    if (sheet >= film.sheetsLeft) yield { code: 'past-end' };
    if (sheet < sheetsPrinted(film, progress)) yield { code: 'no-print' };
  }
  const beside = film.kind === 'sheets' ? others.filter(({ y }) => sheetAt(film, y) === sheet) : others;
  const start = sheetStart(film, sheet);
  const local = (lying: LaidCopy) =>
    start === 0 && !lying.byOutline
      ? lying
      : { ...lying, y: um(lying.y - start), outline: keepsGapBy(lying.outline, lying, lying.byOutline) };
  for (const problem of checkPlace(groundOf(film, progress), local(copy), beside.map(local))) {
    if (problem.code !== 'too-close') yield { code: problem.code };
    else {
      const other = beside[problem.other];
      if (other) yield { code: 'too-close', other, gap: film.gap };
    }
  }
}

/**
 * Why copies may not lie where they are; none, if they may.
 * @param run with the copies lying there
 */
export function refusals(run: LaidRun, copies: readonly LaidCopy[]): Refusal[] {
  const { film } = run;
  const found = copies.flatMap((copy) => [
    ...placeRefusals(
      film,
      run,
      copy,
      run.copies.filter((other) => other.id !== copy.id),
    ),
  ]);
  if (run.spans === null && film.kind === 'roll' && film.spanMax !== null) {
    found.push({ code: 'no-knife-line', spanMax: film.spanMax });
  }
  return found;
}
