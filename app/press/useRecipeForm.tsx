import { useState } from 'react';
import type { Edit } from '../../src/editing';
import type { Origin } from '../../src/model';
import type { Question } from '../../src/pressing';
import {
  type Micrometres,
  parseDuration,
  parseLength,
  parseTemperature,
  type Seconds,
  type Temperature,
  toDegrees,
} from '../../src/units';
import { Field } from '../parts/Field';
import { settingsOrFirst, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { notify } from '../store/view';
import { useWords } from '../words';

/** A recipe as it is, or as it is to be kept. */
interface Recipe<Values> {
  readonly values: Values;
  readonly origin: Origin;
  readonly notes: string;
}

/** What every recipe form has beside its own fields. */
interface Common {
  readonly temperature: string;
  readonly origin: Origin;
  readonly notes: string;
}

/** Reads figures as typed; what cannot be used is noted under the field's name. */
interface Reader {
  readonly seconds: (name: string, text: string) => Seconds;
  readonly length: (name: string, text: string) => Micrometres;
}

/**
 * A form for a recipe's values: what was typed and cannot be used is said beside its field, what is unlikely is asked about once
 * before it is kept, and values that the shop has changed are its own.
 */
export function useRecipeForm<Fields extends object, Values extends { readonly temperature: Temperature }>(
  { values, origin, notes }: Recipe<Values>,
  {
    fields,
    read,
    question,
    keep,
  }: {
    readonly fields: Fields;
    readonly read: (typed: Fields, temperature: Temperature, reader: Reader) => Values;
    readonly question: (next: Values) => readonly Question[];
    readonly keep: (recipe: Recipe<Values>) => Edit;
  },
) {
  const { lengthProblems, durationProblems, temperatureProblems, recipeForm } = useWords();
  const ways = useWays();
  const { station } = useShop(({ book }) => settingsOrFirst(book));
  const unit = station.temperature;
  const shown = String(Math.round(toDegrees(values.temperature, unit)));
  const [form, setForm] = useState<Fields & Common>({ ...fields, temperature: shown, origin, notes });
  const [problems, setProblems] = useState<Readonly<Record<string, string>>>({});
  const [asked, setAsked] = useState<readonly Question[]>([]);
  const set = (changed: Partial<Fields & Common>) => {
    setForm({ ...form, ...changed });
    setAsked([]);
  };
  const field = (name: keyof (Fields & Common) & string, label: string) => (
    <Field
      label={label}
      value={String(form[name])}
      onChange={(value) => set({ [name]: value } as Partial<Fields & Common>)}
      problem={problems[name] ?? null}
    />
  );
  const save = () => {
    const found: Record<string, string> = {};
    const reader: Reader = {
      seconds(name, text) {
        const duration = parseDuration(text, 's');
        if (duration.ok) return duration.value;
        found[name] = durationProblems[duration.problem];
        return 0 as Seconds;
      },
      length(name, text) {
        const length = parseLength(text, ways.unit, 'zero');
        if (length.ok) return length.value;
        found[name] = lengthProblems[length.problem];
        return 0 as Micrometres;
      },
    };
    // A figure that was left as it is stays what it was, to the tenth.
    let { temperature } = values;
    if (form.temperature !== shown) {
      const typed = parseTemperature(form.temperature, unit);
      if (typed.ok) temperature = typed.value;
      else found.temperature = temperatureProblems[typed.problem];
    }
    const next = read(form, temperature, reader);
    setProblems(found);
    if (Object.keys(found).length > 0) return;
    const questions = question(next);
    if (questions.length > 0 && asked.length === 0) return setAsked(questions);
    const isOwn = form.origin === 'common-practice' && JSON.stringify(next) !== JSON.stringify(values);
    const kept = { values: next, origin: isOwn ? 'own' : form.origin, notes: form.notes.trim() } as const;
    act(keep(kept));
    setAsked([]);
    setForm({ ...form, origin: kept.origin });
    notify('plain', recipeForm.saved);
  };
  return { form, set, field, asked, save, unit, ways };
}
