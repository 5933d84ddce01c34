import { useState } from 'react';
import { edits } from '../../src/editing';
import { Choice } from '../parts/Choice';
import { Field } from '../parts/Field';
import { Form } from '../parts/Form';
import { settingsOrFirst, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { type Dialog, openDialog } from '../store/view';
import { FormActions } from '../windows/FormActions';
import { Window } from '../windows/Window';
import { useWords } from '../words';
import { bulkUnits } from '../words/format';
import { formOf, type PriceField, type PriceProblems, type PricesForm, readForm } from './prices-form';
import './pricing.css';

const choices = <Value extends string>(labels: Readonly<Record<Value, string>>) =>
  (Object.entries(labels) as [Value, string][]).map(([value, label]) => ({ value, label }));

/** How this shop prices its work, and who its quotes come from. Nothing is taken over before "Save". */
export function PricesDialog({ back }: { back: Dialog | null }) {
  const { prices: words, common } = useWords();
  const ways = useWays();
  const settings = useShop(({ book }) => settingsOrFirst(book));
  const [form, setForm] = useState(() => formOf(settings, ways));
  const [problems, setProblems] = useState<PriceProblems>({});
  const set = (fields: Partial<PricesForm>) => setForm({ ...form, ...fields });
  const save = () => {
    const read = readForm(form, settings, ways);
    if (!read.ok) return setProblems(read.problem);
    act(edits.editPrices(read.value));
    openDialog(back);
  };
  const field = (name: PriceField, label: string, hint?: string) => (
    <Field
      label={label}
      value={form[name]}
      onChange={(value) => set({ [name]: value })}
      problem={problems[name] ?? null}
      {...(hint ? { hint } : {})}
    />
  );
  const money = (name: PriceField, label: string) => field(name, `${label} (${ways.currency})`);
  return (
    <Window title={words.title}>
      <p className="quiet">{words.hint}</p>
      <div className="cost-form">
        <Form onSubmit={save}>
          <h3>{words.groups.aim}</h3>
          <Choice
            label={words.by}
            value={form.by}
            options={choices(words.bys)}
            onChange={(by) => set({ by })}
          />
          {form.by === 'placement' && money('placement', words.placement)}
          {form.by === 'length' && money('length', words.length(bulkUnits(ways).length))}
          <Choice
            label={words.aim}
            value={form.aim}
            options={choices(words.aims)}
            onChange={(aim) => set({ aim })}
          />
          {field('aimShare', words.aimShare)}
          {field('breaks', words.breaks, words.breaksHint)}
          <Choice
            label={words.breaksBy}
            value={form.breaksBy}
            options={choices(words.breaksBys)}
            onChange={(breaksBy) => set({ breaksBy })}
          />
          <h3>{words.groups.order}</h3>
          {money('artworkFee', words.artworkFee)}
          {field('rush', words.rush)}
          {money('minimum', words.minimum)}
          {field('deposit', words.deposit)}
          <Choice
            label={words.tax}
            value={form.tax}
            options={choices(words.taxes)}
            onChange={(tax) => set({ tax })}
          />
          {form.tax !== 'none' && field('taxName', words.taxName)}
          {form.tax !== 'none' && field('taxShare', words.taxShare)}
          <h3>{words.groups.quote}</h3>
          {field('name', words.name)}
          <div className="field">
            <label htmlFor="address">{words.address}</label>
            <textarea
              id="address"
              rows={3}
              value={form.address}
              onChange={(event) => set({ address: event.target.value })}
            />
          </div>
          {field('validDays', words.validDays)}
          <FormActions save={common.save} back={back} />
        </Form>
      </div>
    </Window>
  );
}
