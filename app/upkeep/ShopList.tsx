import { useState } from 'react';
import { edits } from '../../src/editing';
import { type Hazard, hazards, type Interval } from '../../src/model';
import { parseLength } from '../../src/units';
import { checksOf, type ShopCheck, startingCheck } from '../../src/upkeep';
import { asShown } from '../parts/as-shown';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Field } from '../parts/Field';
import { Form } from '../parts/Form';
import { useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { checkName } from '../store/upkeep';
import { useWords, type Words } from '../words';
import { number, type Ways } from '../words/format';

/** The list is the shop's: names, intervals, checks of its own, and checks that it no longer does. */
export function ShopList() {
  const catalogue = useWords();
  const { upkeep: words } = catalogue;
  const ways = useWays();
  const own = useShop(({ book }) => book.check);
  const [open, setOpen] = useState<string | null>(null);
  return (
    <details className="upkeep-more">
      <summary>{words.list}</summary>
      <ul className="check-list">
        {checksOf(own).map((check) => {
          const name = checkName(check, catalogue);
          return (
            <li key={check.id}>
              <span className="check-name">
                {name}{' '}
                <span className="quiet small">
                  {check.archived ? words.archived : words.interval(check.interval, ways)}
                </span>
              </span>
              {open !== check.id && (
                <Button weight="plain" aria-label={words.changeOf(name)} onPress={() => setOpen(check.id)}>
                  {words.change}
                </Button>
              )}
              {open === check.id && <CheckForm check={check} onClose={() => setOpen(null)} />}
            </li>
          );
        })}
      </ul>
      {open === '' ? (
        <CheckForm check={null} onClose={() => setOpen(null)} />
      ) : (
        <Button onPress={() => setOpen('')}>{words.add}</Button>
      )}
    </details>
  );
}

interface Typed {
  readonly name: string;
  readonly kind: Interval['kind'];
  readonly days: string;
  readonly film: string;
  readonly hazard: Hazard;
}

const filmUnit = ({ unit }: Ways) => (unit === 'mm' ? 'm' : 'ft');

function typedOf(check: ShopCheck | null, catalogue: Words, ways: Ways): Typed {
  const { interval, hazard } = check ?? { interval: { kind: 'day' }, hazard: 'none' };
  const metres = interval.kind === 'film' ? interval.length / (ways.unit === 'mm' ? 1e6 : 304_800) : 50;
  return {
    name: check ? checkName(check, catalogue) : '',
    kind: interval.kind,
    days: String(interval.kind === 'days' ? interval.days : 7),
    film: number(metres, ways.locale, 0, 1),
    hazard,
  };
}

/** Reads an interval as typed; a sentence where it cannot be used. */
function intervalOf(typed: Typed, check: ShopCheck | null, ways: Ways, catalogue: Words): Interval | string {
  const { kind, days, film } = typed;
  const { upkeep, lengthProblems } = catalogue;
  if (kind === 'day') return { kind };
  if (kind === 'days') {
    const count = /^\s*\d{1,3}\s*$/.test(days) ? Number(days) : 0;
    return count >= 2 && count <= 366 ? { kind, days: count } : upkeep.daysProblem;
  }
  const known = check?.interval.kind === 'film' ? check.interval : undefined;
  return asShown<'film'>(typed, typedOf(check, catalogue, ways))('film', known, () => {
    const read = parseLength(film, filmUnit(ways));
    return read.ok ? { kind, length: read.value } : lengthProblems[read.problem];
  });
}

function CheckForm({ check, onClose }: { check: ShopCheck | null; onClose: () => void }) {
  const catalogue = useWords();
  const { upkeep: words, common } = catalogue;
  const ways = useWays();
  const [typed, setTyped] = useState(() => typedOf(check, catalogue, ways));
  const [tried, setTried] = useState(false);
  const interval = intervalOf(typed, check, ways, catalogue);
  const starting = check && startingCheck(check.id);
  const problem = tried && typeof interval === 'string' ? interval : null;
  const set = (fields: Partial<Typed>) => setTyped({ ...typed, ...fields });
  const save = () => {
    setTried(true);
    const name = typed.name.trim();
    if (name === '' || typeof interval === 'string') return;
    // A name that is left as the catalogue has it stays in every language.
    const isCatalogues = starting !== null && name === words.checks[starting];
    const fields = { name: isCatalogues ? '' : name, interval, hazard: typed.hazard };
    act(check ? edits.editCheck(check, fields) : edits.addCheck(fields));
    onClose();
  };
  const archive = (archived: boolean) => {
    if (check) act(edits.editCheck(check, { archived }));
    onClose();
  };
  return (
    <div className="check-form">
      <Form onSubmit={save}>
        <Field
          label={words.name}
          value={typed.name}
          onChange={(name) => set({ name })}
          problem={tried && typed.name.trim() === '' ? words.nameNeeded : null}
        />
        <Choice
          label={words.when}
          value={typed.kind}
          options={(['day', 'days', 'film'] as const).map((value) => ({
            value,
            label: words.intervals[value],
          }))}
          onChange={(kind) => set({ kind })}
        />
        {typed.kind === 'days' && (
          <Field
            label={words.days}
            value={typed.days}
            onChange={(days) => set({ days })}
            inputMode="decimal"
            problem={problem}
          />
        )}
        {typed.kind === 'film' && (
          <Field
            label={words.film(filmUnit(ways))}
            value={typed.film}
            onChange={(film) => set({ film })}
            inputMode="decimal"
            problem={problem}
          />
        )}
        <Choice
          label={words.hazard}
          value={typed.hazard}
          options={hazards.map((value) => ({ value, label: words.hazards[value] }))}
          onChange={(hazard) => set({ hazard })}
        />
        <div className="actions">
          {check && (
            <Button weight="plain" onPress={() => archive(!check.archived)}>
              {check.archived ? words.takeUp : words.giveUp}
            </Button>
          )}
          {check && starting && (
            <Button
              weight="plain"
              onPress={() => {
                act(edits.resetCheck(check.id));
                onClose();
              }}
            >
              {words.reset}
            </Button>
          )}
          <Button onPress={onClose}>{common.cancel}</Button>
          <Button type="submit" weight="primary">
            {common.save}
          </Button>
        </div>
      </Form>
    </div>
  );
}
