import { counted, type Ways } from '../format';

/** Asks what is pressed on, before a run is locked for print. */
export const untold = {
  title: 'What is it pressed on?',
  hint: (count: number, ways: Ways) =>
    `${counted(count, 'line does', 'lines do', ways)} not tell the fabric, which decides how hot the press may be.`,
  all: 'For all lines',
  choose: 'choose',
  other: 'If nobody knows, choose “something else”: it is pressed cool enough for every fabric here.',
};
