import { useState } from 'react';
import { editFilm, editSettings } from '../../src/editing';
import { draftOf, type RollSize, rollWidths, type Settings } from '../../src/model';
import { parseLength } from '../../src/units';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Field } from '../parts/Field';
import { Window } from '../parts/Window';
import { useWays } from '../store/selectors';
import { commit, commitQuietly, useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { useWords } from '../words';
import { typedLength } from '../words/format';
import { type FilmForm, type FilmProblems, formOf, readForm } from './film-form';

const currencies = [
  'USD',
  'EUR',
  'GBP',
  'CAD',
  'AUD',
  'MXN',
  'CHF',
  'SEK',
  'PLN',
  'BRL',
  'INR',
  'JPY',
] as const;

const rollSizes = Object.keys(rollWidths) as RollSize[];

/** The roll: what it is, how it may be used, what it costs. Nothing is taken over before "Save". */
export function FilmDialog() {
  const { filmForm: words, common } = useWords();
  const ways = useWays();
  const film = useShop(({ book }) => draftOf(book)?.film);
  const [form, setForm] = useState<FilmForm | null>(() => (film ? formOf(film, ways) : null));
  const [problems, setProblems] = useState<FilmProblems>({});
  if (!film || !form) return null;

  const field = (name: keyof FilmForm, label: string, hint?: string) => (
    <Field
      label={label}
      value={form[name]}
      onChange={(value) => setForm({ ...form, [name]: value })}
      problem={problems[name] ?? null}
      {...(hint ? { hint } : {})}
    />
  );
  const width = parseLength(form.width, ways.unit);
  const preset = rollSizes.find((size) => width.ok && rollWidths[size] === width.value) ?? 'own';
  const changeWay = (fields: Partial<Pick<Settings, 'unit' | 'currency'>>) => {
    commitQuietly((draft) => editSettings(draft, fields));
    setForm(formOf(film, { ...ways, ...fields }));
  };
  const save = () => {
    const read = readForm(form, ways);
    if (!read.ok) return setProblems(read.problem);
    commit((draft) => editFilm(draft, film.id, read.value));
    openDialog(null);
  };
  return (
    <Window title={words.title}>
      <form
        className="film-form"
        onSubmit={(event) => {
          event.preventDefault();
          save();
        }}
      >
        <Choice
          label={words.preset}
          value={preset}
          options={[
            ...rollSizes.map((value) => ({ value, label: words.presets[value] })),
            { value: 'own' as const, label: words.ownSize },
          ]}
          onChange={(chosen) => {
            if (chosen !== 'own') {
              setForm({ ...form, width: `${typedLength(rollWidths[chosen], ways)} ${ways.unit}` });
            }
          }}
        />
        {field('name', words.name)}
        {field('width', words.width)}
        {field('lengthLeft', words.lengthLeft)}
        {field('left', words.left)}
        {field('right', words.right)}
        {field('lead', words.lead)}
        {field('tail', words.tail)}
        {field('gap', words.gap, words.gapHint)}
        {field('spanMax', words.spanMax, words.spanHint)}
        {field('price', `${words.price} (${ways.currency})`)}
        {field('pricePer', words.pricePer)}
        <Choice
          label={words.unit}
          value={ways.unit}
          options={[
            { value: 'mm', label: words.mm },
            { value: 'in', label: words.in },
          ]}
          onChange={(unit) => changeWay({ unit })}
        />
        <Choice
          label={words.currency}
          value={ways.currency}
          options={[...new Set([...currencies, ways.currency])].map((value) => ({ value, label: value }))}
          onChange={(currency) => changeWay({ currency })}
        />
        <div className="actions">
          <Button onPress={() => openDialog(null)}>{common.cancel}</Button>
          <Button type="submit" weight="primary">
            {common.save}
          </Button>
        </div>
      </form>
    </Window>
  );
}
