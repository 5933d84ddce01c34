import { useState } from 'react';
import type { Edit } from '../../src/editing';
import { origins } from '../../src/model';
import type { Question } from '../../src/pressing';
import { Choice } from '../parts/Choice';
import type { FormTable } from '../parts/fields/form';
import { useForm } from '../parts/fields/useForm';
import { useWays } from '../store/selectors';
import { act } from '../store/shop';
import { notify } from '../store/view';
import { useAllWords } from '../words';
import type { Recipe } from './recipe-form';

/**
 * A form for a recipe's values: what is unlikely is asked about once before it is kept, and values that the shop has changed are
 * its own.
 */
export function useRecipeForm<Values, Name extends string>(
  table: FormTable<Recipe<Values>, Name>,
  recipe: Recipe<Values>,
  question: (next: Values) => readonly Question[],
  keep: (next: Recipe<Values>) => Edit,
) {
  const { recipeForm: words, press } = useAllWords();
  const entryOf = ({ values, origin, notes }: Recipe<Values>) => ({
    record: { values, origin, notes },
    typed: {},
  });
  const form = useForm(table, () => entryOf(recipe), useWays());
  const { record, entry, choose } = form;
  const [asked, setAsked] = useState<{ of: typeof entry; questions: readonly Question[] } | null>(null);
  /** What is asked; once something else is typed or chosen, no longer. */
  const questions = asked?.of === entry ? asked.questions : [];
  const save = () =>
    form.submit((next) => {
      const found = question(next.values);
      if (found.length > 0 && questions.length === 0) return setAsked({ of: entry, questions: found });
      const isChanged = JSON.stringify(next.values) !== JSON.stringify(recipe.values);
      const origin = isChanged && next.origin === 'common-practice' ? 'own' : next.origin;
      const kept = { ...next, origin };
      act(keep(kept));
      form.begin(entryOf(kept));
      notify('plain', words.saved);
    });
  return {
    field: form.field,
    fields: form.fields,
    told: form.told,
    values: record.values,
    set: (changed: Partial<Values>) => choose({ ...record, values: { ...record.values, ...changed } }),
    /** Whose values they are. */
    origin: (
      <Choice
        label={words.origin}
        value={record.origin}
        options={origins.map((value) => ({ value, label: press.origins[value] }))}
        onChange={(origin) => choose({ ...record, origin })}
      />
    ),
    questions,
    save,
  };
}
