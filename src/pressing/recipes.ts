import type { Book, Curer, CureValues, Fabric, Origin, Peel, PressValues } from '../model';
import { startingCure, startingPress } from './starting';

export const pressKey = (peel: Peel, fabric: Fabric): string => `press/${peel}/${fabric}`;

export const cureKey = (by: Curer): string => `cure/${by}`;

/** A recipe as it is now and whose values it has. */
interface Found<Values> {
  readonly values: Values;
  readonly origin: Origin;
  readonly notes: string;
}

/** The press recipe for a film and a fabric: the shop's, or the one to start with. */
export function pressRecipe(book: Pick<Book, 'recipe'>, peel: Peel, fabric: Fabric): Found<PressValues> {
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
