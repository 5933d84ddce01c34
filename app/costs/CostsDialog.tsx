import { useId, useState } from 'react';
import { edits } from '../../src/editing';
import { heaters, labourRooms } from '../../src/model';
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
import {
  type CostField,
  type CostProblems,
  type CostsForm,
  formOf,
  readForm,
  startingForm,
} from './costs-form';
import './costs.css';

/** What this shop pays. Nothing is taken over before "Save"; then the window it was opened from is back. */
export function CostsDialog({ back }: { back: Dialog | null }) {
  const { costsForm: words, common } = useWords();
  const ways = useWays();
  const settings = useShop(({ book }) => settingsOrFirst(book));
  const [form, setForm] = useState(() => formOf(settings.costs, settings.rates, ways));
  const [problems, setProblems] = useState<CostProblems>({});
  const starting = startingForm(ways);
  const { ink, powder, volume, mass, area } = bulkUnits(ways);
  const { currency } = ways;
  const set = (fields: Partial<CostsForm>) => setForm({ ...form, ...fields });
  const save = () => {
    const read = readForm(form, settings, ways);
    if (!read.ok) return setProblems(read.problem);
    act(edits.editSettings(read.value));
    openDialog(back);
  };
  const field = (name: CostField, label: string) => (
    <Field
      key={name}
      label={label}
      value={form[name]}
      onChange={(value) => set({ [name]: value })}
      problem={problems[name] ?? null}
      {...(form[name] !== '' && form[name] === starting[name] ? { hint: words.starting } : {})}
    />
  );
  const price = (name: CostField, label: string, unit: string) =>
    field(name, words.price(label, currency, unit));
  return (
    <Window title={words.title}>
      <p className="quiet">{words.hint}</p>
      <div className="cost-form">
        <Form onSubmit={save}>
          <h3>{words.groups.ink}</h3>
          {price('colourInk', words.colourInk, ink)}
          {price('whiteInk', words.whiteInk, ink)}
          {price('powder', words.powder, powder)}
          {field('colourRate', words.colourRate(`${volume}/${area}`))}
          {field('whiteRate', words.whiteRate(`${volume}/${area}`))}
          {field('powderRate', words.powderRate(`${mass}/${area}`))}
          {field('day', words.day)}
          {field('runsADay', words.runsADay)}
          {field('cleaning', words.cleaning)}
          {field('cleanings', words.cleanings)}
          {field('startColour', words.startColour)}
          {field('startWhite', words.startWhite)}
          <h3>{words.groups.power}</h3>
          {price('energy', words.energy, 'kWh')}
          {heaters.map((by) => field(`watts-${by}`, words.watts[by]))}
          <h3>{words.groups.hands}</h3>
          {labourRooms.map((room) => price(`labour-${room}`, words.labour[room], 'h'))}
          {field('orderTime', words.orderTime)}
          {field('designTime', words.designTime)}
          <h3>{words.groups.garments}</h3>
          {price('blank', words.blank, '1')}
          <Blanks
            value={form.blanks}
            problem={problems.blanks ?? null}
            onChange={(blanks) => set({ blanks })}
          />
          <h3>{words.groups.beside}</h3>
          {field('spoilage', words.spoilage)}
          <Choice
            label={words.overhead}
            value={form.overhead}
            options={(['hour', 'share'] as const).map((value) => ({ value, label: words.overheads[value] }))}
            onChange={(overhead) => set({ overhead })}
          />
          {form.overhead === 'hour'
            ? price('overheadRate', words.overheadRate, 'h')
            : field('overheadShare', words.overheadShare)}
          <FormActions save={common.save} back={back} />
        </Form>
      </div>
    </Window>
  );
}

/** Garments and their prices, a line each. */
function Blanks({
  value,
  problem,
  onChange,
}: {
  value: string;
  problem: string | null;
  onChange: (value: string) => void;
}) {
  const { costsForm: words } = useWords();
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{words.blanks}</label>
      <textarea
        id={id}
        rows={3}
        value={value}
        aria-invalid={problem !== null}
        aria-describedby={`${id}-hint`}
        onChange={(event) => onChange(event.target.value)}
      />
      <p
        id={`${id}-hint`}
        className={problem === null ? 'hint' : 'problem'}
        role={problem === null ? undefined : 'alert'}
      >
        {problem ?? words.blanksHint}
      </p>
    </div>
  );
}
