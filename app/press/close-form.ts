import type { ProposedClosing } from '../../src/log';
import type { Closing, Station } from '../../src/model';
import { type Seconds, um } from '../../src/units';
import { humidity, roomTemperature } from '../parts/fields/air';
import { grams, millilitres } from '../parts/fields/amounts';
import { optional } from '../parts/fields/codec';
import { type Entry, fieldsIn, formTable } from '../parts/fields/form';
import { bareFilmLength } from '../parts/fields/lengths';
import { minutes, whole } from '../parts/fields/numbers';
import { place, placesIn } from '../parts/fields/place';
import { text } from '../parts/fields/text';
import type { Words } from '../words';
import { bulkUnits, filmLength, inkVolume, powderMass, spoken, type Ways } from '../words/format';

export type Proposal = ProposedClosing;

type Said = Words['closing'];
type Machine = keyof Closing['planned']['time'];
const machines: readonly Machine[] = ['printer', 'hands', 'press', 'oven'];
type Lot = keyof Closing['lots'];

/** A number of what is counted in a run: sheets, garments. */
export const counted = whole(0, 999_999, ({ closing }) => closing.whole);

const field = fieldsIn(({ closing }) => closing);
const closing = placesIn<Proposal>();
const actual = closing.to('actual');
const air = closing.to('air');

/** Sheets, and film as long as they are. */
const sheets = place<Proposal, number>(
  ({ film, actual }) => (film.kind === 'sheets' ? actual.sheets : undefined),
  (each, count) => {
    const { actual } = each;
    const length = actual.sheets > 0 ? actual.film / actual.sheets : 0;
    return { ...each, actual: { ...actual, film: um(length * count), sheets: count } };
  },
);

const planned = (amount: string | null, words: Said) =>
  amount === null ? words.unplanned : words.planned(amount);

const ink = (name: 'colour' | 'white') =>
  field(actual.to(name), optional(millilitres(2)), name, {
    hint(words, ways: Ways, { planned: { [name]: amount } }: Proposal) {
      return planned(amount === null ? null : inkVolume(amount, ways), words);
    },
  });

const timeHint =
  (name: Machine) =>
  (words: Said, ways: Ways, { planned }: Proposal) =>
    words.plannedTime(spoken(planned.time[name], ways));

const time = (name: Machine, at = actual.to('time').to(name)) =>
  field<Proposal, Seconds | null>(at, optional(minutes), name, { hint: timeHint(name) });

const lot = (name: Lot) => field(closing.to('lots').to(name), text, (words) => words.lotOf[name]);

/** What a run took, over what was planned or ticked; empty where nobody measured. */
export const closingTable = ({ curer, temperature }: Pick<Station, 'curer' | 'temperature'>) =>
  formTable({
    name: 'closing',
    fields: {
      film: field(
        closing
          .when(({ film }) => film.kind === 'roll')
          .to('actual')
          .to('film'),
        bareFilmLength('zero'),
        (words, ways) => words.film(bulkUnits(ways).length),
        { hint: (words, ways, { planned }) => words.planned(filmLength(planned.film, ways)) },
      ),
      sheets: field(sheets, counted, 'sheets', {
        hint: (words, _, { planned }) => words.planned(String(planned.sheets)),
      }),
      colour: ink('colour'),
      white: ink('white'),
      powder: field(actual.to('powder'), optional(grams(1)), 'powder', {
        hint: (words, ways, { planned: { powder }, actual }) =>
          actual.powder !== null && actual.powder !== powder
            ? words.weighedOut
            : planned(powder === null ? null : powderMass(powder, ways), words),
      }),
      printer: time('printer'),
      hands: time('hands'),
      press: time('press'),
      oven: time(
        'oven',
        actual
          .to('time')
          .when(() => curer === 'oven')
          .to('oven'),
      ),
      'lot-film': lot('film'),
      'lot-colour': lot('colour'),
      'lot-white': lot('white'),
      'lot-powder': lot('powder'),
      temperature: field(air.to('temperature'), optional(roomTemperature(temperature)), (words) =>
        words.temperature(`°${temperature}`),
      ),
      humidity: field(air.to('humidity'), optional(humidity), 'humidity'),
      notes: field(closing.to('notes'), text, 'notes'),
    },
  });

type ClosingField = keyof ReturnType<typeof closingTable>['fields'];

export const closingEntry = (record: Proposal): Entry<Proposal, ClosingField> => ({ record, typed: {} });

/** What was told of a run, figure by figure, without what nobody measured. */
export function toldIn({ film, actual, notes }: Omit<Proposal, 'id'>, words: Said, ways: Ways): string[] {
  const { time } = actual;
  const known = <Value>(value: Value | null, said: (value: Value) => string): string[] =>
    value === null ? [] : [said(value)];
  const { told } = words;
  const machine = (name: Machine) => known(time[name], (value) => told[name](spoken(value, ways)));
  return [
    told.film(film.kind === 'roll' ? filmLength(actual.film, ways) : `${actual.sheets}`),
    ...known(actual.colour, (value) => told.colour(inkVolume(value, ways))),
    ...known(actual.white, (value) => told.white(inkVolume(value, ways))),
    ...known(actual.powder, (value) => told.powder(powderMass(value, ways))),
    ...machines.flatMap(machine),
    ...(notes === '' ? [] : [notes]),
  ];
}
