import { edits } from '../../src/editing';
import { heaters, labourRooms } from '../../src/model';
import { Choice } from '../parts/Choice';
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
        <h3>{words.groups.ink}</h3>
        {field('colourInk')}
        {field('whiteInk')}
        {field('powder')}
        {field('colourRate')}
        {field('whiteRate')}
        {field('powderRate')}
        {field('day')}
        {field('runsADay')}
        {field('cleaning')}
        {field('cleanings')}
        {field('startColour')}
        {field('startWhite')}
        <h3>{words.groups.power}</h3>
        {field('energy')}
        {heaters.map((by) => field(`watts-${by}`))}
        <h3>{words.groups.hands}</h3>
        {labourRooms.map((room) => field(`labour-${room}`))}
        {field('orderTime')}
        {field('designTime')}
        <h3>{words.groups.garments}</h3>
        {field('blank')}
        {field('blanks')}
        <h3>{words.groups.beside}</h3>
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
        {field('overheadRate')}
        {field('overheadShare')}
        <FormActions save={common.save} back={back} />
      </Form>
    </Window>
  );
}
