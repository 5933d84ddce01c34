import { useState } from 'react';
import { setCure, setPress } from '../../src/editing';
import {
  type Curer,
  covers,
  curers,
  type Fabric,
  fabrics,
  type Origin,
  origins,
  type Peel,
  type PressValues,
  peels,
  pressures,
} from '../../src/model';
import {
  cautionsFor,
  cureKey,
  cureRecipe,
  pressKey,
  pressRecipe,
  type Question,
  questionCure,
  questionPress,
} from '../../src/pressing';
import {
  type Micrometres,
  parseDuration,
  parseLength,
  parseTemperature,
  type Seconds,
  type Temperature,
  toDegrees,
} from '../../src/units';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Field } from '../parts/Field';
import { Form } from '../parts/Form';
import { Window } from '../parts/Window';
import { settingsOrFirst, useOpenRun, useWays } from '../store/selectors';
import { commitQuietly, useShop } from '../store/shop';
import { notify, openDialog } from '../store/view';
import { useWords } from '../words';
import { benchLength, dayAndTime, typedLength } from '../words/format';
import { bothDegrees, pressWords, spoken } from '../words/press';

const words = pressWords.recipeForm;

const isCurer = (value: string): value is Curer => (curers as readonly string[]).includes(value);

/** How each fabric is pressed and each way to cure works: the shop's own values over those to start with. */
export function RecipesDialog() {
  const { common } = useWords();
  const open = useOpenRun();
  const [peel, setPeel] = useState<Peel>(open?.film.peel ?? 'hot');
  const [which, setWhich] = useState<Fabric | `cure-${Curer}`>('cotton');
  const by = which.startsWith('cure-') ? which.slice(5) : '';
  return (
    <Window title={words.title}>
      <div className="fields">
        <Choice
          label={words.which}
          value={which}
          options={[
            ...fabrics.map((value) => ({
              value,
              label: `${words.pressing}: ${pressWords.fabrics[value]}`,
            })),
            ...curers.map((value) => ({
              value: `cure-${value}` as const,
              label: `${words.curing}: ${pressWords.curers[value]}`,
            })),
          ]}
          onChange={setWhich}
        />
        {!isCurer(by) && (
          <Choice
            label={words.film}
            value={peel}
            options={peels.map((value) => ({ value, label: pressWords.peels[value] }))}
            onChange={setPeel}
          />
        )}
      </div>
      {isCurer(by) ? (
        <CureForm key={by} by={by} />
      ) : (
        <PressForm key={`${peel} ${which}`} peel={peel} fabric={which as Fabric} />
      )}
      <div className="actions">
        <Button onPress={() => openDialog(null)}>{common.close}</Button>
      </div>
    </Window>
  );
}

/** Reads figures as typed; what cannot be used is noted beside its field. */
function useReader() {
  const { lengthProblems } = useWords();
  const ways = useWays();
  const { station } = useShop(({ book }) => settingsOrFirst(book));
  const [problems, setProblems] = useState<Readonly<Record<string, string>>>({});
  const start = () => {
    const found: Record<string, string> = {};
    return {
      found,
      temperature(name: string, text: string): Temperature {
        const read = parseTemperature(text, station.temperature);
        if (read.ok) return read.value;
        found[name] = pressWords.temperatureProblems[read.problem];
        return 0 as Temperature;
      },
      seconds(name: string, text: string): Seconds {
        const read = parseDuration(text, 's');
        if (read.ok) return read.value;
        found[name] = pressWords.durationProblems[read.problem];
        return 0 as Seconds;
      },
      length(name: string, text: string): Micrometres {
        const read = parseLength(text, ways.unit, 'zero');
        if (read.ok) return read.value;
        found[name] = lengthProblems[read.problem];
        return 0 as Micrometres;
      },
    };
  };
  return { problems, setProblems, start, ways, unit: station.temperature };
}

/** What a form asks about its values before it is saved all the same. */
function Questions({ questions }: { questions: readonly Question[] }) {
  const ways = useWays();
  const { station } = useShop(({ book }) => settingsOrFirst(book));
  if (questions.length === 0) return null;
  return (
    <div role="alert">
      <p className="care">{words.questioned}</p>
      <ul>
        {questions.map((question) => (
          <li key={question.code}>{pressWords.question(question, station.temperature, ways)}</li>
        ))}
      </ul>
    </div>
  );
}

function PressForm({ peel, fabric }: { peel: Peel; fabric: Fabric }) {
  const book = useShop((shop) => shop.book);
  const reader = useReader();
  const { problems, unit, ways } = reader;
  const recipe = pressRecipe(book, peel, fabric);
  const known = book.recipe[pressKey(peel, fabric)];
  const { values } = recipe;
  const [form, setForm] = useState({
    temperature: String(Math.round(toDegrees(values.temperature, unit))),
    small: String(values.seconds.small),
    large: String(values.seconds.large),
    wait: String(values.wait),
    prePress: String(values.prePress),
    second: String(values.secondPress),
    pressure: values.pressure,
    cover: values.cover,
    origin: recipe.origin,
    notes: recipe.notes,
  });
  const [asked, setAsked] = useState<readonly Question[]>([]);
  const set = (fields: Partial<typeof form>) => {
    setForm({ ...form, ...fields });
    setAsked([]);
  };
  const field = (name: 'temperature' | 'small' | 'large' | 'wait' | 'prePress' | 'second', label: string) => (
    <Field
      label={label}
      value={form[name]}
      onChange={(value) => set({ [name]: value })}
      problem={problems[name] ?? null}
    />
  );
  const save = () => {
    const read = reader.start();
    // A figure that was left as it is stays what it was, to the tenth.
    const isSame = form.temperature === String(Math.round(toDegrees(values.temperature, unit)));
    const next: PressValues = {
      temperature: isSame ? values.temperature : read.temperature('temperature', form.temperature),
      pressure: form.pressure,
      seconds: { small: read.seconds('small', form.small), large: read.seconds('large', form.large) },
      wait: read.seconds('wait', form.wait),
      prePress: read.seconds('prePress', form.prePress),
      secondPress: read.seconds('second', form.second),
      cover: form.cover,
    };
    reader.setProblems(read.found);
    if (Object.keys(read.found).length > 0) return;
    const questions = questionPress(fabric, next);
    if (questions.length > 0 && asked.length === 0) return setAsked(questions);
    const origin: Origin =
      form.origin === 'common-practice' && JSON.stringify(next) !== JSON.stringify(values)
        ? 'own'
        : form.origin;
    commitQuietly((draft, context) =>
      setPress(draft, { peel, fabric }, { values: next, origin, notes: form.notes.trim() }, context),
    );
    setAsked([]);
    set({ origin });
    notify('plain', words.saved);
  };
  return (
    <>
      {cautionsFor(fabric).map((caution) => (
        <p key={caution} className="caution small">
          {pressWords.fabricCautions[caution]}
        </p>
      ))}
      <Form onSubmit={save}>
        {field('temperature', words.temperature(unit))}
        {field('small', words.small)}
        {field('large', words.large)}
        <Choice
          label={words.pressure}
          value={form.pressure}
          options={pressures.map((value) => ({ value, label: pressWords.pressures[value] }))}
          onChange={(pressure) => set({ pressure })}
        />
        {field('prePress', words.prePress)}
        {field('wait', words.wait)}
        {field('second', words.second)}
        <Choice
          label={words.cover}
          value={form.cover}
          options={covers.map((value) => ({ value, label: pressWords.covers[value] }))}
          onChange={(cover) => set({ cover })}
        />
        <SourceFields form={form} onChange={set} />
        <Questions questions={asked} />
        <SaveButton asked={asked.length > 0} />
      </Form>
      {known?.kind === 'press' && known.history.length > 0 && (
        <History
          lines={known.history.map(({ until, values: before, origin }) => ({
            until,
            text: `${pressWords.line(before, bothDegrees(before.temperature, unit, ways.locale), ways)} · ${pressWords.origins[origin]}`,
          }))}
        />
      )}
    </>
  );
}

function CureForm({ by }: { by: Curer }) {
  const book = useShop((shop) => shop.book);
  const reader = useReader();
  const { problems, unit, ways } = reader;
  const recipe = cureRecipe(book, by);
  const known = book.recipe[cureKey(by)];
  const { values } = recipe;
  const [form, setForm] = useState({
    temperature: String(Math.round(toDegrees(values.temperature, unit))),
    seconds: String(values.seconds),
    clear: `${typedLength(values.clear, ways)} ${ways.unit}`,
    origin: recipe.origin,
    notes: recipe.notes,
  });
  const [asked, setAsked] = useState<readonly Question[]>([]);
  const set = (fields: Partial<typeof form>) => {
    setForm({ ...form, ...fields });
    setAsked([]);
  };
  const field = (name: 'temperature' | 'seconds' | 'clear', label: string) => (
    <Field
      label={label}
      value={form[name]}
      onChange={(value) => set({ [name]: value })}
      problem={problems[name] ?? null}
    />
  );
  const save = () => {
    const read = reader.start();
    const isSame = form.temperature === String(Math.round(toDegrees(values.temperature, unit)));
    const next = {
      temperature: isSame ? values.temperature : read.temperature('temperature', form.temperature),
      seconds: read.seconds('seconds', form.seconds),
      clear: by === 'press' ? read.length('clear', form.clear) : values.clear,
    };
    reader.setProblems(read.found);
    if (Object.keys(read.found).length > 0) return;
    const questions = questionCure(by, next);
    if (questions.length > 0 && asked.length === 0) return setAsked(questions);
    const origin: Origin =
      form.origin === 'common-practice' && JSON.stringify(next) !== JSON.stringify(values)
        ? 'own'
        : form.origin;
    commitQuietly((draft, context) =>
      setCure(draft, by, { values: next, origin, notes: form.notes.trim() }, context),
    );
    setAsked([]);
    set({ origin });
    notify('plain', words.saved);
  };
  return (
    <>
      <p className="caution small">{pressWords.cautions.cure}</p>
      <Form onSubmit={save}>
        {field('temperature', words.temperature(unit))}
        {field('seconds', words.seconds)}
        {by === 'press' && field('clear', words.clear)}
        <SourceFields form={form} onChange={set} />
        <Questions questions={asked} />
        <SaveButton asked={asked.length > 0} />
      </Form>
      <ul className="quiet small">
        {pressWords.cureLooks.map((look) => (
          <li key={look}>{look}</li>
        ))}
      </ul>
      {known?.kind === 'cure' && known.history.length > 0 && (
        <History
          lines={known.history.map(({ until, values: before, origin }) => ({
            until,
            text: `${pressWords.cureLine(
              bothDegrees(before.temperature, unit, ways.locale),
              spoken(before.seconds, ways),
              before.clear > 0 ? benchLength(before.clear, ways) : null,
            )} · ${pressWords.origins[origin]}`,
          }))}
        />
      )}
    </>
  );
}

/** Whose values they are, and the shop's notes. */
function SourceFields({
  form,
  onChange,
}: {
  form: { readonly origin: Origin; readonly notes: string };
  onChange: (fields: { origin?: Origin; notes?: string }) => void;
}) {
  return (
    <>
      <Choice
        label={words.origin}
        value={form.origin}
        options={origins.map((value) => ({ value, label: pressWords.origins[value] }))}
        onChange={(origin) => onChange({ origin })}
      />
      <Field label={words.notes} value={form.notes} onChange={(notes) => onChange({ notes })} />
    </>
  );
}

const SaveButton = ({ asked }: { asked: boolean }) => (
  <div className="actions">
    <Button type="submit" weight="primary">
      {asked ? words.keepAnyway : words.save}
    </Button>
  </div>
);

function History({ lines }: { lines: readonly { readonly until: string; readonly text: string }[] }) {
  const ways = useWays();
  return (
    <section>
      <h3>{words.history}</h3>
      <ul className="small">
        {lines.toReversed().map(({ until, text }) => (
          <li key={until}>
            {text} <span className="quiet">{words.until(dayAndTime(until, ways))}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
