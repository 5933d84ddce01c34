import type { Book, Curer, CureValues, Origin, Peel, PressValues } from '../model';
import type { Fabric } from '../units';
import { startingCure, startingPress } from './starting';

export const pressKey = (peel: Peel, fabric: Fabric): string => `press/${peel}/${fabric}`;

export const cureKey = (by: Curer): string => `cure/${by}`;

/** A recipe as it is now and whose values it has. */
interface Found<Values> {
  readonly values: Values;
  readonly origin: Origin;
  readonly notes: string;
}

/**
 * The press recipe for a film and a fabric: the shop's, or the one to start with.
 * @param told `null` while nobody has told the fabric: it is pressed as gently as one that is not in the list
 */
export function pressRecipe(book: Pick<Book, 'recipe'>, peel: Peel, told: Fabric | null): Found<PressValues> {
  const fabric = told ?? 'other';
  const set = book.recipe[pressKey(peel, fabric)];
  if (set?.kind === 'press') return set;
  return { values: startingPress(peel, fabric), origin: 'common-practice', notes: '' };
}

/** The curing recipe for a way to cure. */
export function cureRecipe(book: Pick<Book, 'recipe'>, by: Curer): Found<CureValues> {
  const set = book.recipe[cureKey(by)];
  if (set?.kind === 'cure') return set;
  return { values: startingCure(by), origin: 'common-practice', notes: '' };
}
