import { edits } from '../../src/editing';
import { curers, type Station } from '../../src/model';
import { Choice } from '../parts/Choice';
import { FieldGroup } from '../parts/FieldGroup';
import { Form } from '../parts/Form';
import { useForm } from '../parts/fields/useForm';
import { Tick } from '../parts/Tick';
import { settingsOrFirst, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { FormActions } from '../windows/FormActions';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { Machines } from './Machines';
import { stationEntry, stationTable } from './station-form';

/** What the shop works with and how long its hands take. Nothing is taken over before "Save". */
export function StationDialog() {
  const { station: words, press, common } = useAllWords();
  const ways = useWays();
  const { station } = useShop(({ book }) => settingsOrFirst(book));
  const form = useForm(stationTable, () => stationEntry(station), ways);
  const { record } = form;
  const set = (chosen: Partial<Station>) => form.choose({ ...record, ...chosen });
  const save = (read: Station) => {
    act(edits.editStation(read));
    openDialog(null);
  };
  return (
    <Window title={words.title}>
      <p className="quiet">{words.hint}</p>
      <Form onSubmit={() => form.submit(save)}>
        <FieldGroup title={words.groups.equipment}>
          <Choice
            label={words.cutApart}
            value={record.cutApart}
            options={(['after-cure', 'before-powder'] as const).map((value) => ({
              value,
              label: words.cutAparts[value],
            }))}
            onChange={(cutApart) => set({ cutApart })}
          />
          <Choice
            label={words.curer}
            value={record.curer}
            options={curers.map((value) => ({ value, label: press.curers[value] }))}
            onChange={(curer) => set({ curer })}
          />
          <Tick
            label={words.oneClosing}
            checked={record.oneClosing}
            onChange={(oneClosing) => set({ oneClosing })}
          />
          {form.field('large')}
        </FieldGroup>
        <Machines form={form} />
        <FieldGroup isFolded title={words.groups.hours} told={form.told('monday', 'saturday', 'sunday')}>
          <p className="quiet small">{words.hoursHint}</p>
          {form.fields('monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday')}
          {form.fields('closedDays')}
        </FieldGroup>
        <FieldGroup isFolded title={words.groups.heat} told={form.told('wetLimit', 'powderLimit', 'trays')}>
          {form.fields('wetLimit', 'powderLimit', 'trays')}
        </FieldGroup>
        <FieldGroup
          isFolded
          title={words.groups.handling}
          told={form.told('apart', 'dress', 'place', 'pack')}
        >
          {form.fields('cutOff', 'powder', 'load', 'loose', 'apart', 'cutMetre')}
          {form.fields('dress', 'place', 'pack', 'allowance')}
        </FieldGroup>
        <FormActions save={common.save} />
      </Form>
    </Window>
  );
}
