import type { Failed } from '../../src/editing';
import { asSeconds, fromVolume } from '../../src/units';
import { millilitres } from '../parts/fields/amounts';
import { type Entry, fieldsIn, formTable } from '../parts/fields/form';
import { minutes } from '../parts/fields/numbers';
import { placesIn } from '../parts/fields/place';

const field = fieldsIn(({ upkeep }) => upkeep);
const failed = placesIn<Failed>();
const ink = millilitres(1);

/** What it took to have all nozzles back: the time above all. */
export const failedTable = formTable({
  name: 'failed',
  fields: {
    seconds: field(failed.to('seconds'), minutes, 'failedMinutes'),
    colour: field(failed.to('colour'), ink, 'failedColour'),
    white: field(failed.to('white'), ink, 'failedWhite'),
  },
  problemsOf: ({ seconds }, { words }) => (seconds === 0 ? { seconds: words.upkeep.failedNeeded } : {}),
});

/** Nothing told yet. */
export const failedEntry: Entry<Failed, keyof typeof failedTable.fields> = {
  record: { seconds: asSeconds(0), colour: fromVolume(0, 'ml'), white: fromVolume(0, 'ml') },
  typed: { seconds: '' },
};
