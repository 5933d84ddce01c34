import type { Question } from '../../../src/pressing';
import type { Temperature, TemperatureUnit } from '../../../src/units';
import { bothDegrees, rulerLength, type Ways, whole } from '../format';

/** Why a value of a recipe is asked about. */
function question(asked: Question, unit: TemperatureUnit, ways: Ways): string {
  const temperature = (value: Temperature) => bothDegrees(value, unit, ways.locale);
  switch (asked.code) {
    case 'other-unit':
      return `That figure looks like the other scale: ${temperature(asked.meant)} is what presses are set to. Check the unit.`;
    case 'scorches':
      return `Above ${temperature(asked.most)} this may scorch, glaze or yellow.`;
    case 'dye-migrates':
      return `Above ${temperature(asked.most)} the dye of polyester may rise into the print.`;
    case 'melts-nothing':
      return `Below ${temperature(asked.least)} the powder hardly melts and will not hold.`;
    case 'too-short':
      return `Less than ${whole(asked.least, ways)} s is hardly enough for the powder to flow.`;
    case 'too-long':
      return `More than ${whole(asked.most, ways)} s is longer than is usual and may harm print and fabric.`;
    case 'pre-press-long':
      return `A pre-press of more than ${whole(asked.most, ways)} s dries nothing further and may scorch.`;
    case 'second-press-long':
      return `A second press of more than ${whole(asked.most, ways)} s is longer than is usual.`;
    case 'wait-long':
      return `Film is cold after ${whole(asked.most, ways)} s; a longer wait only costs time.`;
    case 'clear-off':
      return `A platen hovers ${rulerLength(asked.least, ways)} to ${rulerLength(asked.most, ways)} above the film: nearer it may touch, further it hardly heats.`;
  }
}

export const recipeForm = {
  title: 'Recipes',
  groups: { press: 'On the press', around: 'Pre-press, peeling and cover', source: 'Source and notes' },
  film: 'Film peels',
  which: 'For',
  pressing: 'Pressing',
  curing: 'Curing',
  temperature: (unit: TemperatureUnit) => `Temperature (°${unit})`,
  pressure: 'Pressure',
  small: 'Seconds, small transfers',
  large: (from: string) => `Seconds, ${from} and larger`,
  wait: 'Wait before peeling, seconds',
  prePress: 'Pre-press, seconds',
  second: 'Second press, seconds',
  cover: 'Cover sheet',
  seconds: 'Seconds',
  clear: 'Hover gap',
  origin: 'These values are',
  notes: 'Notes',
  save: 'Save this recipe',
  keepAnyway: 'Keep it all the same',
  saved: 'The recipe is saved; what it was before is in its history.',
  history: 'Before',
  until: (when: string) => `until ${when}`,
  questioned: 'Is this intended?',
  question,
};
