import { useState } from 'react';
import { edits } from '../../src/editing';
import {
  type Curer,
  type CureValues,
  covers,
  curers,
  type Fabric,
  fabrics,
  type Origin,
  origins,
  type Peel,
  type PressValues,
  peels,
  pressures,
} from '../../src/model';
import {
  cautionsFor,
  cureKey,
  cureRecipe,
  pressKey,
  pressRecipe,
  type Question,
  questionCure,
  questionPress,
} from '../../src/pressing';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Field } from '../parts/Field';
import { Form } from '../parts/Form';
import { settingsOrFirst, useOpenRun, useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { Window } from '../windows/Window';
import { useWords } from '../words';
import { benchLength, bothDegrees, dayAndTime, spoken, typedLength } from '../words/format';
import { useRecipeForm } from './useRecipeForm';

const isCurer = (value: string): value is Curer => (curers as readonly string[]).includes(value);

/** How each fabric is pressed and each way to cure works: the shop's own values over those to start with. */
export function RecipesDialog() {
  const { common, recipeForm: words, press } = useWords();
  const open = useOpenRun();
  const [peel, setPeel] = useState<Peel>(open?.film.peel ?? 'hot');
  const [which, setWhich] = useState<Fabric | `cure-${Curer}`>('cotton');
  const by = which.startsWith('cure-') ? which.slice(5) : '';
  return (
    <Window title={words.title}>
      <div className="fields">
        <Choice
          label={words.which}
          value={which}
          options={[
            ...fabrics.map((value) => ({
              value,
              label: `${words.pressing}: ${press.fabrics[value]}`,
            })),
            ...curers.map((value) => ({
              value: `cure-${value}` as const,
              label: `${words.curing}: ${press.curers[value]}`,
            })),
          ]}
          onChange={setWhich}
        />
        {!isCurer(by) && (
          <Choice
            label={words.film}
            value={peel}
            options={peels.map((value) => ({ value, label: press.peels[value] }))}
            onChange={setPeel}
          />
        )}
      </div>
      {isCurer(by) ? (
        <CureForm key={by} by={by} />
      ) : (
        <PressForm key={`${peel} ${which}`} peel={peel} fabric={which as Fabric} />
      )}
      <div className="actions">
        <Button onPress={() => openDialog(null)}>{common.close}</Button>
      </div>
    </Window>
  );
}

/** What a form asks about its values before it is saved all the same. */
function Questions({ questions }: { questions: readonly Question[] }) {
  const { recipeForm: words } = useWords();
  const ways = useWays();
  const { station } = useShop(({ book }) => settingsOrFirst(book));
  if (questions.length === 0) return null;
  return (
    <div role="alert">
      <p className="care">{words.questioned}</p>
      <ul>
        {questions.map((question) => (
          <li key={question.code}>{words.question(question, station.temperature, ways)}</li>
        ))}
      </ul>
    </div>
  );
}

function PressForm({ peel, fabric }: { peel: Peel; fabric: Fabric }) {
  const { press, recipeForm: words } = useWords();
  const book = useShop((shop) => shop.book);
  const recipe = pressRecipe(book, peel, fabric);
  const known = book.recipe[pressKey(peel, fabric)];
  const { values } = recipe;
  const { form, set, field, asked, save, unit, ways } = useRecipeForm(recipe, {
    fields: {
      small: String(values.seconds.small),
      large: String(values.seconds.large),
      wait: String(values.wait),
      prePress: String(values.prePress),
      second: String(values.secondPress),
      pressure: values.pressure,
      cover: values.cover,
    },
    read: (typed, temperature, { seconds }): PressValues => ({
      temperature,
      pressure: typed.pressure,
      seconds: { small: seconds('small', typed.small), large: seconds('large', typed.large) },
      wait: seconds('wait', typed.wait),
      prePress: seconds('prePress', typed.prePress),
      secondPress: seconds('second', typed.second),
      cover: typed.cover,
    }),
    question: (next) => questionPress(fabric, next),
    keep: (next) => edits.setPress({ peel, fabric }, next),
  });
  return (
    <>
      {cautionsFor(fabric).map((caution) => (
        <p key={caution} className="caution small">
          {press.fabricCautions[caution]}
        </p>
      ))}
      <Form onSubmit={save}>
        {field('temperature', words.temperature(unit))}
        {field('small', words.small)}
        {field('large', words.large)}
        <Choice
          label={words.pressure}
          value={form.pressure}
          options={pressures.map((value) => ({ value, label: press.pressures[value] }))}
          onChange={(pressure) => set({ pressure })}
        />
        {field('prePress', words.prePress)}
        {field('wait', words.wait)}
        {field('second', words.second)}
        <Choice
          label={words.cover}
          value={form.cover}
          options={covers.map((value) => ({ value, label: press.covers[value] }))}
          onChange={(cover) => set({ cover })}
        />
        <SourceFields form={form} onChange={set} />
        <Questions questions={asked} />
        <SaveButton asked={asked.length > 0} />
      </Form>
      {known?.kind === 'press' && known.history.length > 0 && (
        <History
          lines={known.history.map(({ until, values: before, origin }) => ({
            until,
            text: `${press.line(before, bothDegrees(before.temperature, unit, ways.locale), ways)} · ${press.origins[origin]}`,
          }))}
        />
      )}
    </>
  );
}

function CureForm({ by }: { by: Curer }) {
  const { press, recipeForm: words } = useWords();
  const book = useShop((shop) => shop.book);
  const ways = useWays();
  const recipe = cureRecipe(book, by);
  const known = book.recipe[cureKey(by)];
  const { values } = recipe;
  const shownClear = `${typedLength(values.clear, ways)} ${ways.unit}`;
  const { form, set, field, asked, save, unit } = useRecipeForm(recipe, {
    fields: {
      seconds: String(values.seconds),
      clear: shownClear,
    },
    read: (typed, temperature, { seconds, length }): CureValues => ({
      temperature,
      seconds: seconds('seconds', typed.seconds),
      clear: by === 'press' && typed.clear !== shownClear ? length('clear', typed.clear) : values.clear,
    }),
    question: (next) => questionCure(by, next),
    keep: (next) => edits.setCure(by, next),
  });
  return (
    <>
      <p className="caution small">{press.cautions.cure}</p>
      <Form onSubmit={save}>
        {field('temperature', words.temperature(unit))}
        {field('seconds', words.seconds)}
        {by === 'press' && field('clear', words.clear)}
        <SourceFields form={form} onChange={set} />
        <Questions questions={asked} />
        <SaveButton asked={asked.length > 0} />
      </Form>
      <ul className="quiet small">
        {press.cureLooks.map((look) => (
          <li key={look}>{look}</li>
        ))}
      </ul>
      {known?.kind === 'cure' && known.history.length > 0 && (
        <History
          lines={known.history.map(({ until, values: before, origin }) => ({
            until,
            text: `${press.cureLine(
              bothDegrees(before.temperature, unit, ways.locale),
              spoken(before.seconds, ways),
              before.clear > 0 ? benchLength(before.clear, ways) : null,
            )} · ${press.origins[origin]}`,
          }))}
        />
      )}
    </>
  );
}

/** Whose values they are, and the shop's notes. */
function SourceFields({
  form,
  onChange,
}: {
  form: { readonly origin: Origin; readonly notes: string };
  onChange: (fields: { origin?: Origin; notes?: string }) => void;
}) {
  const { recipeForm: words, press } = useWords();
  return (
    <>
      <Choice
        label={words.origin}
        value={form.origin}
        options={origins.map((value) => ({ value, label: press.origins[value] }))}
        onChange={(origin) => onChange({ origin })}
      />
      <Field label={words.notes} value={form.notes} onChange={(notes) => onChange({ notes })} />
    </>
  );
}

function SaveButton({ asked }: { asked: boolean }) {
  const { recipeForm: words } = useWords();
  return (
    <div className="actions">
      <Button type="submit" weight="primary">
        {asked ? words.keepAnyway : words.save}
      </Button>
    </div>
  );
}

function History({ lines }: { lines: readonly { readonly until: string; readonly text: string }[] }) {
  const { recipeForm: words } = useWords();
  const ways = useWays();
  return (
    <section>
      <h3>{words.history}</h3>
      <ul className="small">
        {lines.toReversed().map(({ until, text }) => (
          <li key={until}>
            {text} <span className="quiet">{words.until(dayAndTime(until, ways))}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
