import { useState } from 'react';
import { editStation } from '../../src/editing';
import { curers, type Station } from '../../src/model';
import { type Micrometres, parseDuration, parseLength, type Seconds, toUnit } from '../../src/units';
import { Choice } from '../parts/Choice';
import { Field } from '../parts/Field';
import { Form } from '../parts/Form';
import { FormActions } from '../parts/FormActions';
import { Tick } from '../parts/Tick';
import { Window } from '../parts/Window';
import { settingsOrFirst, useWays } from '../store/selectors';
import { commitQuietly, useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { useWords, type Words } from '../words';
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
type TextField = TimeField | LengthField | 'hands' | 'presses';
type StationForm = Readonly<Record<TextField, string>> &
  Pick<Station, 'temperature' | 'cutApart' | 'oneClosing' | 'curer' | 'closes'>;

const timeFields = Object.keys(times) as TimeField[];

function formOf(station: Station, ways: Ways): StationForm {
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

type Problems = Partial<Record<TextField, string>>;

/** Reads the form; every field that cannot be used is named with its reason. */
function readForm(form: StationForm, ways: Ways, catalogue: Words): Station | Problems {
  const problems: Problems = {};
  const time = (field: TimeField): Seconds => {
    const read = parseDuration(form[field], times[field]);
    if (read.ok) return read.value;
    problems[field] = catalogue.durationProblems[read.problem];
    return 0 as Seconds;
  };
  const length = (field: LengthField): Micrometres => {
    const unit = field === 'perHour' ? (ways.unit === 'mm' ? 'm' : 'ft') : ways.unit;
    const read = parseLength(form[field], unit);
    if (read.ok) return read.value;
    problems[field] = catalogue.lengthProblems[read.problem];
    return 0 as Micrometres;
  };
  const count = (field: 'hands' | 'presses', least: number, sentence: string): number => {
    const value = /^\s*\d{1,2}\s*$/.test(form[field]) ? Number(form[field]) : -1;
    if (value < least || value > 20) problems[field] = sentence;
    return value;
  };
  const station: Station = {
    temperature: form.temperature,
    cutApart: form.cutApart,
    oneClosing: form.oneClosing,
    curer: form.curer,
    closes: form.closes,
    hands: count('hands', 1, catalogue.station.handsCount),
    printer: { perHour: length('perHour'), warmUp: time('warmUp'), check: time('check') },
    press: {
      count: count('presses', 0, catalogue.station.count),
      platen: { width: length('platenWidth'), length: length('platenLength') },
      warmUp: time('pressWarmUp'),
      rise: time('rise'),
      fall: time('fall'),
    },
    oven: { width: length('ovenWidth'), length: length('ovenLength') },
    wetLimit: time('wetLimit'),
    handling: {
      cutOff: time('cutOff'),
      powder: time('powder'),
      load: time('load'),
      cutApart: time('apart'),
      dress: time('dress'),
      place: time('place'),
      pack: time('pack'),
    },
  };
  return Object.keys(problems).length > 0 ? problems : station;
}

const isStation = (read: Station | Problems): read is Station => 'printer' in read;

/** What the shop works with and how long its hands take. Nothing is taken over before "Save". */
export function StationDialog() {
  const catalogue = useWords();
  const { station: words, press } = catalogue;
  const ways = useWays();
  const { station } = useShop(({ book }) => settingsOrFirst(book));
  const [form, setForm] = useState(() => formOf(station, ways));
  const [problems, setProblems] = useState<Problems>({});
  const save = () => {
    const read = readForm(form, ways, catalogue);
    if (!isStation(read)) return setProblems(read);
    commitQuietly((draft) => editStation(draft, read));
    openDialog(null);
  };
  const set = (fields: Partial<StationForm>) => setForm({ ...form, ...fields });
  const field = (name: TextField) => (
    <Field
      key={name}
      label={words[name]}
      value={form[name]}
      onChange={(value) => set({ [name]: value })}
      problem={problems[name] ?? null}
    />
  );
  const onBed = form.curer === 'press' ? [] : (['ovenWidth', 'ovenLength'] as const);
  return (
    <Window title={words.title}>
      <p className="quiet">{words.hint}</p>
      <Form onSubmit={save}>
        <Choice
          label={words.cutApart}
          value={form.cutApart}
          options={(['after-cure', 'before-powder'] as const).map((value) => ({
            value,
            label: words.cutAparts[value],
          }))}
          onChange={(cutApart) => set({ cutApart })}
        />
        <Choice
          label={words.curer}
          value={form.curer}
          options={curers.map((value) => ({ value, label: press.curers[value] }))}
          onChange={(curer) => set({ curer })}
        />
        <Tick
          label={words.oneClosing}
          checked={form.oneClosing}
          onChange={(oneClosing) => set({ oneClosing })}
        />
        {(['perHour', 'hands', 'presses', 'platenWidth', 'platenLength', ...onBed] as const).map(field)}
        {timeFields.map(field)}
        <div className="field">
          <label htmlFor="closes">{words.closes}</label>
          <input
            id="closes"
            type="time"
            required
            value={form.closes}
            onChange={(event) => event.target.value !== '' && set({ closes: event.target.value })}
          />
        </div>
        <FormActions save={catalogue.common.save} />
      </Form>
    </Window>
  );
}
