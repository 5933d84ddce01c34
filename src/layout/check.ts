import type { Film } from '../model';
import { checkPlacement, type Ground } from '../packing';
import type { Micrometres } from '../units';
import type { LaidCopy, LaidRun } from './laid';

/** Why a copy may not lie where it is held. */
export type Refusal =
  | { readonly code: 'outside-left' | 'outside-right' | 'before-lead' | 'past-end' | 'may-not-turn' }
  | { readonly code: 'too-close'; readonly other: LaidCopy; readonly gap: Micrometres }
  | { readonly code: 'no-knife-line'; readonly spanMax: Micrometres };

/** What of a film decides where a copy may lie. */
export const groundOf = ({ width, lengthLeft, margins, gap }: Film): Ground => ({
  width,
  end: lengthLeft,
  margins,
  gap,
});

/**
 * Why a copy may not lie where it is; none, if it may.
 * @param run with the copy lying there
 */
export function refusals(run: LaidRun, copy: LaidCopy): Refusal[] {
  const { film } = run;
  const found: Refusal[] = [];
  if (copy.turned && copy.transfer.turn === 'fixed') found.push({ code: 'may-not-turn' });
  const others = run.copies.filter((other) => other.id !== copy.id);
  for (const problem of checkPlacement(groundOf(film), copy, others)) {
    if (problem.code !== 'too-close') found.push({ code: problem.code });
    else {
      const other = others[problem.other];
      if (other) found.push({ code: 'too-close', other, gap: film.gap });
    }
  }
  if (run.spans === null && film.spanMax !== null)
    found.push({ code: 'no-knife-line', spanMax: film.spanMax });
  return found;
}
