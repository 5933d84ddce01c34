import type { Station } from '../../src/model';
import {
  asSeconds,
  fail,
  type Micrometres,
  ok,
  parseDuration,
  parseLength,
  type Result,
  type Seconds,
  toUnit,
  um,
} from '../../src/units';
import { asShown } from '../parts/as-shown';
import { wordsNow } from '../words';
import { number, typedLength, type Ways } from '../words/format';

/** Times and what unit a bare number of them has. */
const times = {
  warmUp: 'min',
  check: 'min',
  pressWarmUp: 'min',
  wetLimit: 'min',
  rise: 's',
  fall: 's',
  cutOff: 's',
  powder: 's',
  load: 's',
  apart: 's',
  dress: 's',
  place: 's',
  pack: 's',
} as const;
const lengths = ['perHour', 'platenWidth', 'platenLength', 'ovenWidth', 'ovenLength'] as const;

type TimeField = keyof typeof times;
type LengthField = (typeof lengths)[number];
export type TextField = TimeField | LengthField | 'hands' | 'presses';
/** The form as typed. */
export type StationForm = Readonly<Record<TextField, string>> &
  Pick<Station, 'temperature' | 'cutApart' | 'oneClosing' | 'curer' | 'closes'>;

export const timeFields = Object.keys(times) as TimeField[];

export function formOf(station: Station, ways: Ways): StationForm {
  const { printer, press, oven, handling } = station;
  const bench = (length: Micrometres) => `${typedLength(length, ways)} ${ways.unit}`;
  const min = (seconds: Seconds) => (seconds % 60 === 0 ? `${seconds / 60} min` : `${seconds} s`);
  const s = (seconds: Seconds) => `${seconds} s`;
  return {
    temperature: station.temperature,
    cutApart: station.cutApart,
    oneClosing: station.oneClosing,
    curer: station.curer,
    closes: station.closes,
    hands: String(station.hands),
    presses: String(press.count),
    perHour:
      ways.unit === 'mm'
        ? `${number(toUnit(printer.perHour, 'm'), ways.locale, 0, 3)} m`
        : `${number(toUnit(printer.perHour, 'ft'), ways.locale, 0, 2)} ft`,
    warmUp: min(printer.warmUp),
    check: min(printer.check),
    pressWarmUp: min(press.warmUp),
    wetLimit: min(station.wetLimit),
    platenWidth: bench(press.platen.width),
    platenLength: bench(press.platen.length),
    ovenWidth: bench(oven.width),
    ovenLength: bench(oven.length),
    rise: s(press.rise),
    fall: s(press.fall),
    cutOff: s(handling.cutOff),
    powder: s(handling.powder),
    load: s(handling.load),
    apart: s(handling.cutApart),
    dress: s(handling.dress),
    place: s(handling.place),
    pack: s(handling.pack),
  };
}

/** Sentences beside the fields they belong to. */
export type StationProblems = Partial<Record<TextField, string>>;

/**
 * Reads the form; every field that cannot be used is named with its reason, and one that is as it was shown keeps its value.
 * @param known what the form was opened with
 */
export function readForm(form: StationForm, known: Station, ways: Ways): Result<Station, StationProblems> {
  const keep = asShown<TextField>(form, formOf(known, ways));
  const words = wordsNow();
  const problems: StationProblems = {};
  const time = (field: TimeField, before: Seconds): Seconds =>
    keep(field, before, () => {
      const read = parseDuration(form[field], times[field]);
      if (read.ok) return read.value;
      problems[field] = words.durationProblems[read.problem];
      return asSeconds(0);
    });
  const length = (field: LengthField, before: Micrometres): Micrometres =>
    keep(field, before, () => {
      const unit = field === 'perHour' ? (ways.unit === 'mm' ? 'm' : 'ft') : ways.unit;
      const read = parseLength(form[field], unit);
      if (read.ok) return read.value;
      problems[field] = words.lengthProblems[read.problem];
      return um(0);
    });
  const count = (field: 'hands' | 'presses', least: number, sentence: string): number => {
    const value = /^\s*\d{1,2}\s*$/.test(form[field]) ? Number(form[field]) : -1;
    if (value < least || value > 20) problems[field] = sentence;
    return value;
  };
  const { printer, press, oven, handling } = known;
  const station: Station = {
    temperature: form.temperature,
    cutApart: form.cutApart,
    oneClosing: form.oneClosing,
    curer: form.curer,
    closes: form.closes,
    hands: count('hands', 1, words.station.handsCount),
    printer: {
      perHour: length('perHour', printer.perHour),
      warmUp: time('warmUp', printer.warmUp),
      check: time('check', printer.check),
    },
    press: {
      count: count('presses', 0, words.station.count),
      platen: {
        width: length('platenWidth', press.platen.width),
        length: length('platenLength', press.platen.length),
      },
      warmUp: time('pressWarmUp', press.warmUp),
      rise: time('rise', press.rise),
      fall: time('fall', press.fall),
    },
    oven: { width: length('ovenWidth', oven.width), length: length('ovenLength', oven.length) },
    wetLimit: time('wetLimit', known.wetLimit),
    handling: {
      cutOff: time('cutOff', handling.cutOff),
      powder: time('powder', handling.powder),
      load: time('load', handling.load),
      cutApart: time('apart', handling.cutApart),
      dress: time('dress', handling.dress),
      place: time('place', handling.place),
      pack: time('pack', handling.pack),
    },
  };
  return Object.keys(problems).length > 0 ? fail(problems) : ok(station);
}
