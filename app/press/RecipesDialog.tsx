import { useState } from 'react';
import { edits } from '../../src/editing';
import { type Curer, covers, curers, type Peel, peels, pressures } from '../../src/model';
import {
  type Act,
  cautionsFor,
  cureKey,
  cureRecipe,
  isDusty,
  pressKey,
  pressRecipe,
  type Question,
  questionCure,
  questionPress,
} from '../../src/pressing';
import { FABRICS, type Fabric } from '../../src/units';
import { Cautions } from '../panels/Cautions';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { FieldGroup } from '../parts/FieldGroup';
import { Form } from '../parts/Form';
import { settingsOrFirst, useOpenRun, useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { bothDegrees, dayAndTime, rulerLength, spoken } from '../words/format';
import { cureTable, pressTable } from './recipe-form';
import { useRecipeForm } from './useRecipeForm';

const isCurer = (value: string): value is Curer => (curers as readonly string[]).includes(value);

/** How each fabric is pressed and each way to cure works: the shop's own values over those to start with. */
export function RecipesDialog() {
  const { common, recipeForm: words, press } = useAllWords();
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
            ...FABRICS.map((value) => ({
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

const useStation = () => useShop(({ book }) => settingsOrFirst(book)).station;

/** What a form asks about its values before it is saved all the same. */
function Questions({ questions }: { questions: readonly Question[] }) {
  const { recipeForm: words } = useAllWords();
  const ways = useWays();
  const { temperature: unit } = useStation();
  if (questions.length === 0) return null;
  return (
    <div role="alert">
      <p className="care">{words.questioned}</p>
      <ul>
        {questions.map((question) => (
          <li key={question.code}>{words.question(question, unit, ways)}</li>
        ))}
      </ul>
    </div>
  );
}

function PressForm({ peel, fabric }: { peel: Peel; fabric: Fabric }) {
  const { press, recipeForm: words } = useAllWords();
  const book = useShop((shop) => shop.book);
  const recipe = pressRecipe(book, peel, fabric);
  const known = book.recipe[pressKey(peel, fabric)];
  const station = useStation();
  const ways = useWays();
  const { values, set, field, fields, told, origin, questions, save } = useRecipeForm(
    pressTable(station),
    recipe,
    (next) => questionPress(fabric, next),
    (next) => edits.setPress({ peel, fabric }, next),
  );
  return (
    <>
      {cautionsFor(fabric).map((caution) => (
        <p key={caution} className="caution small">
          {press.fabricCautions[caution]}
        </p>
      ))}
      <Form onSubmit={save}>
        <FieldGroup title={words.groups.press}>
          {fields('temperature', 'small', 'large')}
          <Choice
            label={words.pressure}
            value={values.pressure}
            options={pressures.map((value) => ({ value, label: press.pressures[value] }))}
            onChange={(pressure) => set({ pressure })}
          />
        </FieldGroup>
        <FieldGroup isFolded title={words.groups.around} told={told('prePress', 'wait', 'second')}>
          {fields('prePress', 'wait', 'second')}
          <Choice
            label={words.cover}
            value={values.cover}
            options={covers.map((value) => ({ value, label: press.covers[value] }))}
            onChange={(cover) => set({ cover })}
          />
        </FieldGroup>
        <FieldGroup title={words.groups.source}>
          {origin}
          {field('notes')}
        </FieldGroup>
        <Questions questions={questions} />
        <SaveButton asked={questions.length > 0} />
      </Form>
      {known?.kind === 'press' && known.history.length > 0 && (
        <History
          lines={known.history.map(({ until, values: before, origin }) => ({
            until,
            text: `${press.line(before, bothDegrees(before.temperature, station.temperature, ways.locale), ways)} · ${press.origins[origin]}`,
          }))}
        />
      )}
    </>
  );
}

/** What is done where something is cured. */
const CURING: Readonly<Record<Curer, Act>> = { press: 'cure-press', oven: 'cure-oven', line: 'line' };

function CureForm({ by }: { by: Curer }) {
  const { press } = useAllWords();
  const book = useShop((shop) => shop.book);
  const ways = useWays();
  const recipe = cureRecipe(book, by);
  const known = book.recipe[cureKey(by)];
  const { temperature: unit } = useStation();
  const { field, fields, origin, questions, save } = useRecipeForm(
    cureTable(unit, by),
    recipe,
    (next) => questionCure(by, next),
    (next) => edits.setCure(by, next),
  );
  return (
    <>
      <Cautions small cautions={[press.cautions[CURING[by]]]} dusty={isDusty(CURING[by])} />
      <Form onSubmit={save}>
        {fields('temperature', 'seconds', 'clear')}
        {origin}
        {field('notes')}
        <Questions questions={questions} />
        <SaveButton asked={questions.length > 0} />
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
              before.clear > 0 ? rulerLength(before.clear, ways) : null,
            )} · ${press.origins[origin]}`,
          }))}
        />
      )}
    </>
  );
}

function SaveButton({ asked }: { asked: boolean }) {
  const { recipeForm: words } = useAllWords();
  return (
    <div className="actions">
      <Button writes type="submit" weight="primary">
        {asked ? words.keepAnyway : words.save}
      </Button>
    </div>
  );
}

function History({ lines }: { lines: readonly { readonly until: string; readonly text: string }[] }) {
  const { recipeForm: words } = useAllWords();
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
