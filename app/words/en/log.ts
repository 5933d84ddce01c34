import { counted, type Ways } from '../format';

/** The Log room. */
export const log = {
  title: 'Log',
  head: (runs: number, ways: Ways) => counted(runs, 'closed run', 'closed runs', ways),
  empty:
    'Nothing is closed yet. A run that is closed in the Press room is kept here with what it was planned to take and what it took.',
  toPress: 'To the Press room',
  table: 'Closed runs',
  run: 'Run',
  day: 'Closed',
  film: 'Film',
  waste: 'Waste',
  colour: 'Colour ink',
  white: 'White ink',
  powder: 'Powder',
  minutes: 'Hands',
  spoiled: 'Spoiled',
  planned: 'planned',
  notMeasured: 'not measured',
  none: 'none',
};
