import { um } from '../units';
import type { Run } from './records';

/** A run that nothing is laid on yet. */
export const draftRun = (fields: Pick<Run, 'id' | 'name' | 'film' | 'takes' | 'changed'>): Run => ({
  ...fields,
  state: 'draft',
  history: [],
  printedTo: um(0),
  spoiled: [],
  snapshot: null,
  received: null,
  basis: null,
});
