import type { Failed } from '../../../src/editing';
import type { Hazard, Interval, Subject } from '../../../src/model';
import type { AirRemark, Standing, StartingCheck } from '../../../src/upkeep';
import { counted, inkVolume, roundLength, spoken, type Ways } from '../format';
import { numbered } from './numbered';

/** Checks of printer, press and room, and the air. */
export const upkeep = {
  numbered,
  checks: {
    'white-stirred': 'White ink stirred or circulated',
    circulated: 'Before a run: white ink stirred or circulated',
    'stood-still': 'After days idle: head cleaned, all nozzles back',
    nozzles: 'Nozzle check printed and looked at',
    'film-square': 'Film square in the feed',
    'powder-dry': 'Powder dry and free of lumps',
    blade: 'Blade sharp, its slot clean',
    room: 'Temperature and humidity of the room read',
    capping: 'Capping station and wiper cleaned',
    parked: 'Print head parked and capped for the night',
    filters: 'Filters and fans free of powder',
    platen: 'Platen temperature checked with a probe',
    'waste-ink': 'Waste ink emptied',
    rollers: 'Feed rollers wiped',
    'deep-clean': 'Around the print head cleaned',
  } satisfies Record<StartingCheck, string>,
  /** Before a run is locked, and at the head of the day. */
  line: (list: string, more: number, ways: Ways) =>
    `Maintenance due: ${list}${more > 0 ? `; and ${counted(more, 'more', 'more', ways)}` : ''}.`,
  lineNever: 'No maintenance is noted yet.',
  pastDate: (list: string) => `Past best before: ${list}.`,
  open: 'Maintenance',
  title: 'Maintenance',
  hint: 'The list to start with is common practice, without a source. The manuals of your printer, press, ink, film and powder come before it: change it to what they say.',
  due: 'Due',
  nothingDue: 'Nothing is due.',
  doneFor: 'Done for now',
  standing: (standing: Standing, ways: Ways): string => {
    switch (standing.kind) {
      case 'done':
        return '';
      case 'never':
        return 'not noted yet';
      case 'days':
        return standing.over === 0 ? 'due today' : `due for ${counted(standing.over, 'day', 'days', ways)}`;
      case 'film':
        return standing.over === 0 ? 'due now' : `due for ${roundLength(standing.over, ways)} of film`;
      case 'before-run':
        return 'due before the next run';
    }
  },
  intervals: {
    day: 'each day',
    days: 'every so many days',
    film: 'every so much film',
    idle: 'after days without a print',
    pause: 'before a run after a pause',
  } satisfies Record<Interval['kind'], string>,
  interval: (interval: Interval, ways: Ways): string => {
    switch (interval.kind) {
      case 'day':
        return 'each day';
      case 'days':
        return interval.days === 7 ? 'each week' : `every ${counted(interval.days, 'day', 'days', ways)}`;
      case 'film':
        return `every ${roundLength(interval.length, ways)} of film`;
      case 'idle':
        return `after ${counted(interval.days, 'day', 'days', ways)} without a print`;
      case 'pause':
        return `before a run, after ${counted(interval.hours, 'hour', 'hours', ways)} without one`;
    }
  },
  lastDone: (when: string, by: string) => `${when}, ${by}`,
  done: 'Done',
  doneOf: (check: string) => `Done: ${check}`,
  failed: 'It failed',
  failedMinutes: 'Minutes it took',
  failedColour: 'Colour ink (ml)',
  failedWhite: 'White ink (ml)',
  failedNeeded: 'Type how many minutes cleaning took.',
  failedHint: 'The ink leaves the stock. Note the check as done once all nozzles print.',
  noteFailed: 'Note the failure',
  notedFailed: (check: string) => `Noted as failed: ${check}. It stays due until it passes.`,
  failedTold: ({ seconds, colour, white }: Failed, ways: Ways): string =>
    [
      `failed, ${spoken(seconds, ways)}`,
      ...(colour > 0 ? [`${inkVolume(colour, ways)} of colour`] : []),
      ...(white > 0 ? [`${inkVolume(white, ways)} of white`] : []),
    ].join(', '),
  takeBack: 'Take back',
  takeBackOf: (check: string) => `Take back: ${check}`,
  by: 'Initials',
  byHint: 'Of who does it; kept for the next time.',
  byNeeded: 'Type the initials of who did it.',
  note: 'Note',
  noteHint: 'What was found. It goes with the next check that is ticked off.',
  noted: (check: string) => `Noted: ${check}.`,
  tookBack: (check: string) => `Taken back: ${check}.`,
  hazards: {
    none: 'nothing',
    ink: 'ink and cleaning fluid',
    heat: 'heat',
    powder: 'powder dust',
    blade: 'a blade',
  } satisfies Record<Hazard, string>,
  cautions: {
    ink: 'Ink and cleaning fluid: nitrile gloves and eye protection. Read their safety data sheets first.',
    heat: 'Hot platen: hands clear, heat-resistant gloves, a probe made for it. Let the press cool before you wipe it.',
    powder:
      'Powder: keep it out of the air and away from flames, wear an N95 or FFP2 mask, work under extraction.',
    blade: 'Blades are sharp: switch the cutter off before you reach in.',
  } satisfies Record<Exclude<Hazard, 'none'>, string>,
  deference: 'The makers’ manuals and data sheets, local codes and trained practice come first.',
  air: 'The room',
  airHint: (warmth: string) =>
    `Common practice: ${warmth} and 40–60% relative humidity. The makers’ sheets prevail.`,
  temperature: (unit: string) => `Temperature (${unit})`,
  humidity: 'Relative humidity (%)',
  noteAir: 'Note the room',
  airNeeded: 'Type a temperature, a humidity or both.',
  humidityProblems: {
    unreadable: 'This is not a humidity. Type a percentage, such as 52.',
    impossible: 'No workroom is so dry or so damp. Type a percentage between 5 and 100.',
  },
  noRoom: 'No workroom is like that. Check the figure and its unit.',
  remarks: {
    cold: 'Colder than is usual: ink runs thick and powder clings badly.',
    warm: 'Warmer than is usual: ink may dry in the nozzles, powder may cake.',
    dry: 'Drier than is usual: film charges up and powder sticks where it should not.',
    damp: 'Damper than is usual: film and powder take up moisture, and a cure turns oily.',
  } satisfies Record<Exclude<AirRemark, 'impossible'>, string>,
  lastReading: (when: string, air: string, by: string) =>
    `Last read ${when}: ${air}${by === '' ? '' : `, ${by}`}`,
  noReading: 'The room has not been read yet.',
  reading: 'The room',
  list: 'Change the list',
  change: 'Change',
  changeOf: (check: string) => `Change: ${check}`,
  add: 'A check of your own',
  name: 'What is checked',
  nameNeeded: 'Say what is checked.',
  when: 'When',
  days: 'Days',
  daysProblem: 'Write a whole number of days from 2 to 366.',
  idleDays: 'Days without a print',
  idleProblem: 'Write a whole number of days from 1 to 366.',
  pauseHours: 'Hours without a run',
  pauseProblem: 'Write a whole number of hours from 1 to 168.',
  of: 'Kept for',
  subjects: {
    shop: 'the whole shop',
    printer: 'each printer',
    press: 'each press',
    oven: 'each oven or line',
  } satisfies Record<Subject, string>,
  beforePrint: 'Before this print',
  pass: 'Go on without',
  film: (unit: string) => `Film (${unit})`,
  hazard: 'What can hurt at it',
  giveUp: 'No longer done',
  takeUp: 'Do it again',
  reset: 'As to start with',
  archived: 'no longer done',
  history: 'What was noted',
  nothingNoted: 'Nothing is noted yet.',
  historyTakenBack: 'taken back',
  older: (count: number, ways: Ways) => `${counted(count, 'older note', 'older notes', ways)} not shown.`,
  dates: 'Best before',
  pastSince: (name: string, lot: string, date: string) =>
    `${name}${lot === '' ? '' : `, lot ${lot}`}: best before ${date}`,
  datesHint: 'Try old film, ink or powder on a scrap first. Their makers’ sheets say how long they keep.',
};
