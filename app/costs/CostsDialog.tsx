import { edits } from '../../src/editing';
import { heaters, labourRooms } from '../../src/model';
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
import { costsEntry, costsTable, overheadOf } from './costs-form';
import './costs.css';

/** What this shop pays. Nothing is taken over before "Save"; then the window it was opened from is back. */
export function CostsDialog({ back }: { back: Dialog | null }) {
  const { costsForm: words, common } = useAllWords();
  const ways = useWays();
  const settings = useShop(({ book }) => settingsOrFirst(book));
  const form = useForm(costsTable, () => costsEntry(settings), ways);
  const { costs } = form.record;
  const save = (read: typeof form.record) => {
    act(edits.editSettings(read));
    openDialog(back);
  };
  const { field } = form;
  return (
    <Window title={words.title}>
      <p className="quiet">{words.hint}</p>
      <Form onSubmit={() => form.submit(save)}>
        <FieldGroup title={words.groups.ink}>{form.fields('colourInk', 'whiteInk', 'powder')}</FieldGroup>
        <FieldGroup title={words.groups.hands}>
          {labourRooms.map((room) => field(`labour-${room}`))}
          {form.fields('orderTime', 'designTime')}
        </FieldGroup>
        <FieldGroup title={words.groups.garments}>{form.fields('blank', 'blanks')}</FieldGroup>
        <FieldGroup title={words.groups.beside}>
          {field('spoilage')}
          <Choice
            label={words.overhead}
            value={costs.overhead.kind}
            options={(['hour', 'share'] as const).map((value) => ({ value, label: words.overheads[value] }))}
            onChange={(kind) =>
              form.choose({
                ...form.record,
                costs: { ...costs, overhead: overheadOf(kind, form.opened.costs.overhead) },
              })
            }
          />
          {form.fields('overheadRate', 'overheadShare')}
        </FieldGroup>
        <FieldGroup isFolded title={words.groups.power} told={form.told('energy')}>
          {field('energy')}
          {heaters.map((by) => field(`watts-${by}`))}
        </FieldGroup>
        <FieldGroup
          isFolded
          title={words.groups.takes}
          told={form.told('colourRate', 'whiteRate', 'powderRate')}
        >
          {form.fields('colourRate', 'whiteRate', 'powderRate')}
        </FieldGroup>
        <FieldGroup isFolded title={words.groups.cleaning} told={form.told('day', 'cleaning')}>
          {form.fields('day', 'runsADay', 'cleaning', 'cleanings', 'startColour', 'startWhite')}
        </FieldGroup>
        <FormActions save={common.save} back={back} />
      </Form>
    </Window>
  );
}
