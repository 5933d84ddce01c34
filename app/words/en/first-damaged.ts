import { listedUpTo, type Ways } from '../format';

/** What is said of stored records that are damaged as soon as it is found. */
export const damaged = {
  history: 'What could be undone was damaged where it was stored. The book stays as it is; undo begins anew.',
  reconciled: (films: readonly string[], ways: Pick<Ways, 'locale'>) =>
    `The stock entries of a film did not add up to what is left of it. An entry of the difference was added. Please count: ${listedUpTo(4, films, 'more', ways)}.`,
};
