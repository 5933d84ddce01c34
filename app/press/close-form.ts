import type { Closing, Station } from '../../src/model';
import {
  asSeconds,
  fail,
  fromDegrees,
  fromUnit,
  ok,
  parseDuration,
  parseLength,
  parseMass,
  parseTemperature,
  parseVolume,
  type Result,
  type Seconds,
  toDegrees,
  toMass,
  toVolume,
  um,
} from '../../src/units';
import { asShown } from '../parts/as-shown';
import { wordsNow } from '../words';
import type { Ways } from '../words/format';

const amountFields = ['film', 'colour', 'white', 'powder'] as const;
const timeFields = ['printer', 'hands', 'press', 'oven'] as const;
export const lotFields = ['film', 'colour', 'white', 'powder'] as const;

type Field =
  | (typeof amountFields)[number]
  | (typeof timeFields)[number]
  | 'temperature'
  | 'humidity'
  | 'notes';

/** What was used, as typed; empty where nobody measured. */
export type CloseForm = { readonly [Name in Field]: string } & { readonly lots: Closing['lots'] };

export type CloseProblems = Partial<Record<Field, string>>;

export type Proposal = Omit<Closing, 'changed'>;

export const rollUnit = ({ unit }: Ways) => (unit === 'mm' ? 'm' : 'ft');

const decimal = (value: number, { locale }: Ways, most: number) =>
  new Intl.NumberFormat(locale, { useGrouping: false, maximumFractionDigits: most }).format(value);

/** The fields of a proposal: what was planned or ticked, until someone corrects it. */
export function formOf(
  { actual, lots, air, notes, film }: Proposal,
  ways: Ways,
  station: Station,
): CloseForm {
  const minutes = (time: Seconds | null) => (time === null ? '' : decimal(time / 60, ways, 1));
  return {
    film:
      film.kind === 'roll'
        ? decimal(actual.film / fromUnit(1, rollUnit(ways)), ways, 3)
        : String(actual.sheets),
    colour: actual.colour === null ? '' : decimal(toVolume(actual.colour, 'ml'), ways, 2),
    white: actual.white === null ? '' : decimal(toVolume(actual.white, 'ml'), ways, 2),
    powder: actual.powder === null ? '' : decimal(toMass(actual.powder, 'g'), ways, 1),
    printer: minutes(actual.time.printer),
    hands: minutes(actual.time.hands),
    press: minutes(actual.time.press),
    oven: station.curer === 'oven' ? minutes(actual.time.oven) : '',
    temperature:
      air.temperature === null
        ? ''
        : decimal(toDegrees(fromDegrees(air.temperature, 'C'), station.temperature), ways, 1),
    humidity: air.humidity === null ? '' : decimal(100 * air.humidity, ways, 0),
    notes,
    lots,
  };
}

/**
 * The closing as typed over its proposal. A field that was left as it stood keeps the proposal's own figure, to the last digit.
 */
export function readForm(
  form: CloseForm,
  proposal: Proposal,
  ways: Ways,
  station: Station,
): Result<Proposal, CloseProblems> {
  const words = wordsNow();
  const keep = asShown<Field>(form, formOf(proposal, ways, station));
  const problems: CloseProblems = {};
  const { actual } = proposal;
  /** Reads a field; empty is not measured. */
  const read = <Value>(
    field: Field,
    known: Value | null,
    parse: (text: string) => Result<Value, string>,
  ): Value | null =>
    keep(field, known, () => {
      if (form[field].trim() === '') return null;
      const value = parse(form[field]);
      if (value.ok) return value.value;
      problems[field] = value.problem;
      return null;
    });
  const told = <Value, Problem extends string>(
    value: Result<Value, Problem>,
    sentences: Readonly<Record<Problem, string>>,
  ): Result<Value, string> => (value.ok ? value : fail(sentences[value.problem]));
  const amounts = words.closing.amountProblems;
  const minutes = (field: (typeof timeFields)[number]) =>
    read(field, actual.time[field], (text) => told(parseDuration(text, 'min'), words.durationProblems));

  const onRoll = proposal.film.kind === 'roll';
  let film = { film: actual.film, sheets: actual.sheets };
  if (onRoll) {
    const length = read('film', actual.film, (text) =>
      told(parseLength(text, rollUnit(ways), 'zero'), words.lengthProblems),
    );
    if (length === null) problems.film ??= words.lengthProblems.empty;
    film = { film: length ?? actual.film, sheets: 0 };
  } else {
    const sheets = read('film', actual.sheets, (text) =>
      /^\s*\d{1,6}\s*$/.test(text) ? ok(Number(text)) : fail(words.closing.whole),
    );
    if (sheets === null) problems.film ??= words.closing.whole;
    const each = actual.sheets > 0 ? actual.film / actual.sheets : 0;
    film = { film: um(Math.round(each * (sheets ?? 0))), sheets: sheets ?? 0 };
  }
  const temperature = read('temperature', proposal.air.temperature, (text) => {
    const value = told(parseTemperature(text, station.temperature), words.temperatureProblems);
    return value.ok ? ok(toDegrees(value.value, 'C')) : value;
  });
  const humidity = read('humidity', proposal.air.humidity, (text) => {
    const value = Number(text.replace('%', '').replace(',', '.'));
    return value >= 0 && value <= 100 ? ok(value / 100) : fail(words.closing.humidityProblem);
  });
  const closing: Proposal = {
    ...proposal,
    actual: {
      ...film,
      colour: read('colour', actual.colour, (text) => told(parseVolume(text, 'ml'), amounts)),
      white: read('white', actual.white, (text) => told(parseVolume(text, 'ml'), amounts)),
      powder: read('powder', actual.powder, (text) => told(parseMass(text, 'g'), amounts)),
      time: {
        printer: minutes('printer'),
        hands: minutes('hands'),
        press: minutes('press'),
        oven: station.curer === 'oven' ? minutes('oven') : asSeconds(0),
      },
    },
    lots: form.lots,
    air: { temperature, humidity },
    notes: form.notes.trim(),
  };
  return Object.keys(problems).length > 0 ? fail(problems) : ok(closing);
}
