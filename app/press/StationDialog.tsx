import { useState } from 'react';
import { edits } from '../../src/editing';
import { curers } from '../../src/model';
import { Choice } from '../parts/Choice';
import { Field } from '../parts/Field';
import { Form } from '../parts/Form';
import { Tick } from '../parts/Tick';
import { settingsOrFirst, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { FormActions } from '../windows/FormActions';
import { Window } from '../windows/Window';
import { useWords } from '../words';
import {
  formOf,
  readForm,
  type StationForm,
  type StationProblems,
  type TextField,
  timeFields,
} from './station-form';

/** What the shop works with and how long its hands take. Nothing is taken over before "Save". */
export function StationDialog() {
  const catalogue = useWords();
  const { station: words, press } = catalogue;
  const ways = useWays();
  const { station } = useShop(({ book }) => settingsOrFirst(book));
  const [form, setForm] = useState(() => formOf(station, ways));
  const [problems, setProblems] = useState<StationProblems>({});
  const save = () => {
    const read = readForm(form, station, ways);
    if (!read.ok) return setProblems(read.problem);
    act(edits.editStation(read.value));
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
