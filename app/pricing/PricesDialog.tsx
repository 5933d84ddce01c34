import { edits } from '../../src/editing';
import type { Pricing } from '../../src/model';
import { Choice } from '../parts/Choice';
import { FieldGroup } from '../parts/FieldGroup';
import { Form } from '../parts/Form';
import { useForm } from '../parts/fields/useForm';
import { settingsOrFirst, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { type Dialog, openDialog } from '../store/view';
import { FormActions } from '../windows/FormActions';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { MarkField } from './MarkField';
import { pricesEntry, pricesTable, taxOf } from './prices-form';
import './pricing.css';

const choices = <Value extends string>(labels: Readonly<Record<Value, string>>) =>
  (Object.entries(labels) as [Value, string][]).map(([value, label]) => ({ value, label }));

/** How this shop prices its work, and who its quotes come from. Nothing is taken over before "Save". */
export function PricesDialog({ back }: { back: Dialog | null }) {
  const { prices: words, common } = useAllWords();
  const ways = useWays();
  const settings = useShop(({ book }) => settingsOrFirst(book));
  const form = useForm(pricesTable, () => pricesEntry(settings), ways);
  const { pricing } = form.record;
  const set = (chosen: Partial<Pricing>) =>
    form.choose({ ...form.record, pricing: { ...pricing, ...chosen } });
  const save = (read: typeof form.record) => {
    act(edits.editPrices(read));
    openDialog(back);
  };
  return (
    <Window title={words.title}>
      <p className="quiet">{words.hint}</p>
      <Form onSubmit={() => form.submit(save)}>
        <FieldGroup title={words.groups.aim}>
          <Choice
            label={words.by}
            value={pricing.by}
            options={choices(words.bys)}
            onChange={(by) => set({ by })}
          />
          {form.fields('placement', 'length')}
          <Choice
            label={words.aim}
            value={pricing.aim.kind}
            options={choices(words.aims)}
            onChange={(kind) => set({ aim: { ...pricing.aim, kind } })}
          />
          {form.fields('aimShare', 'breaks')}
          <Choice
            label={words.breaksBy}
            value={pricing.breaksBy}
            options={choices(words.breaksBys)}
            onChange={(breaksBy) => set({ breaksBy })}
          />
        </FieldGroup>
        <FieldGroup title={words.groups.order}>
          {form.fields('artworkFee', 'rush', 'minimum', 'deposit')}
          <Choice
            label={words.tax}
            value={pricing.tax?.kind ?? 'none'}
            options={choices(words.taxes)}
            onChange={(kind) => set({ tax: taxOf(kind, form.opened.pricing.tax) })}
          />
          {form.fields('taxName', 'taxShare')}
        </FieldGroup>
        <FieldGroup
          isFolded={settings.letterhead.name !== ''}
          title={words.groups.quote}
          told={form.told('name', 'validDays')}
        >
          {form.fields('name', 'address', 'validDays')}
          <MarkField mark={form.record.mark} onChange={(mark) => form.choose({ ...form.record, mark })} />
        </FieldGroup>
        <FormActions save={common.save} back={back} />
      </Form>
    </Window>
  );
}
