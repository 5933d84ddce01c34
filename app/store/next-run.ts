import { wordsNow } from '../words';
import { useShop } from './shop';

/** What a run that is begun now is called. */
export const nextRunName = (): string =>
  wordsNow().runs.numbered(Object.keys(useShop.getState().book.run).length + 1);
