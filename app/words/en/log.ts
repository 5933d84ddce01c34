import type { Compared } from '../../../src/log';
import type { Closing } from '../../../src/model';
import { counted, type Ways, whole } from '../format';

const comparedNames: Record<Compared, string> = {
  film: 'Film',
  white: 'White ink',
  colour: 'Colour ink',
  powder: 'Powder',
  printer: 'Printer time',
  hands: 'Labour time',
  press: 'Press time',
};

/** The Log room. */
export const log = {
  title: 'Log',
  head: (runs: number, ways: Ways) => counted(runs, 'closed run', 'closed runs', ways),
  empty:
    'Nothing is closed yet. A run is one layout printed in one go. One that is closed in the Press room is kept here, as planned and as it went. Film, ink, powder and time are told, and what was spoiled and why.',
  toPress: 'To the Press room',
  one: 'One run is closed. From two on, charts show here how waste, film, spoiled copies and plans develop.',
  table: 'Closed runs',
  run: 'Run',
  day: 'Closed',
  film: 'Film',
  waste: 'Waste',
  colour: 'Colour ink',
  white: 'White ink',
  powder: 'Powder',
  hands: 'Labour',
  spoiled: 'Spoiled',
  planned: (amount: string) => `planned ${amount}`,
  notMeasured: 'not measured',
  none: 'none',
  asTable: 'As a table',

  wasteTitle: 'Waste of each run',
  wasteTold: (lately: string, last: number, before: string | null, ways: Ways) =>
    `Over the last ${counted(last, 'run', 'runs', ways)} ${lately} of the film was waste${
      before === null ? '' : `, over as many before ${before}`
    }. Gaps count as waste.`,
  wasteLegend: 'Dots are what was used, the dashed line is what was planned.',
  wastePlanned: 'Planned waste',

  weekTitle: 'Film a week',
  weekTold: (latest: string, mean: string, weeks: number, ways: Ways) =>
    `The latest week took ${latest}; the mean of ${counted(weeks, 'week', 'weeks', ways)} is ${mean}.`,
  week: 'Week from',
  runs: 'Runs',

  spoiledTitle: 'Spoiled, and why',
  spoiledTold: (copies: number, share: string, most: string, ofMost: number, ways: Ways) =>
    `${counted(copies, 'copy', 'copies', ways)} spoiled, ${share} of all. Most often: ${most}, ${whole(ofMost, ways)}.`,
  spoiledNone: 'No copy was spoiled.',
  spoiledFilm: 'film spoiled',
  reasonAt: (reason: string, stage: string) => `${reason}, ${stage}`,
  reason: 'Why',
  copies: 'Copies',

  plannedTitle: 'Planned against used',
  what: 'Compare',
  compared: comparedNames,
  plannedTold: (what: Compared, share: string, runs: number, ways: Ways) =>
    `${comparedNames[what]}: ${share} of what was planned, the median of ${counted(runs, 'run', 'runs', ways)} that measured it.`,
  plannedFew: (what: Compared) => `${comparedNames[what]}: fewer than two runs measured it.`,
  plannedLegend: 'On the dashed line plan and use are equal; above it more was used.',
  plannedColumn: 'Planned',
  usedColumn: 'Used',

  airTitle: 'Spoiled, and the air',
  airTold: (damp: string, mild: string, dry: string, runs: number, ways: Ways) =>
    `Spoiled copies: ${mild} at 40–60% humidity, ${dry} below it, ${damp} above it. ${counted(runs, 'run', 'runs', ways)} noted it. A humidity of 40–60% is common practice; the makers’ sheets come first.`,
  airFew:
    'Fewer than two runs noted the humidity. Put it in when a run is closed, and it is told here beside what was spoiled.',
  airNone: 'no copies',
  humidity: 'Humidity',
  share: 'Spoiled share',

  lotTitle: 'Lots',
  lotTold: (lots: number, ways: Ways) =>
    `${counted(lots, 'lot was', 'lots were', ways)} in use, each with what was spoiled while it was.`,
  lotNone: 'No lots were noted. Note them in the Stock room, and closing a run takes them over.',
  lot: 'Lot',
  lotKind: 'Of',
  lotKinds: { film: 'film', colour: 'colour ink', white: 'white ink', powder: 'powder' } satisfies Record<
    keyof Closing['lots'],
    string
  >,
};
