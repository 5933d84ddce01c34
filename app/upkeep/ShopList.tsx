import { useState } from 'react';
import { edits } from '../../src/editing';
import { hazards, type Subject, subjects } from '../../src/model';
import { checksOf, isOfPrinter, machinesOf, type ShopCheck, startingCheck } from '../../src/upkeep';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Form } from '../parts/Form';
import { useForm } from '../parts/fields/useForm';
import { settingsOrFirst, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { checkName } from '../store/upkeep';
import { useAllWords } from '../words';
import { type CheckFields, checkEntry, checkTable, intervalOf } from './check-form';

/** The list is the shop's: names, intervals, checks of its own, and checks that it no longer does. */
export function ShopList() {
  const catalogue = useAllWords();
  const { upkeep: words } = catalogue;
  const ways = useWays();
  const own = useShop(({ book }) => book.check);
  const [open, setOpen] = useState<string | null>(null);
  return (
    <details className="upkeep-more">
      <summary>{words.list}</summary>
      <ul className="check-list">
        {checksOf(own, ways.unit).map((check) => {
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

function CheckForm({ check, onClose }: { check: ShopCheck | null; onClose: () => void }) {
  const { upkeep: words, common } = useAllWords();
  const ways = useWays();
  const starting = check && startingCheck(check.id);
  const form = useForm(checkTable(starting), () => checkEntry(check), ways);
  const { station } = useShop(({ book }) => settingsOrFirst(book));
  const machinesIn = (of: Subject) => (of === 'shop' ? 1 : machinesOf(station, of).length);
  const isAskedOf = subjects.some((of) => machinesIn(of) > 1);
  const { record, opened } = form;
  const save = (read: CheckFields) => {
    act(check ? edits.editCheck(check, read) : edits.addCheck(read));
    onClose();
  };
  const archive = (archived: boolean) => {
    if (check) act(edits.editCheck(check, { archived }));
    onClose();
  };
  return (
    <div className="check-form">
      <Form onSubmit={() => form.submit(save)}>
        {form.field('name')}
        <Choice
          label={words.when}
          value={record.interval.kind}
          options={(['day', 'days', 'film', 'idle', 'pause'] as const).map((value) => ({
            value,
            label: words.intervals[value],
          }))}
          onChange={(kind) => form.choose({ ...record, interval: intervalOf(kind, opened.interval, ways) })}
        />
        {form.fields('days', 'film', 'idleDays', 'pauseHours')}
        {isAskedOf && !isOfPrinter(record.interval) && (
          <Choice
            label={words.of}
            value={record.of}
            options={subjects
              .filter((of) => machinesIn(of) > 0 || of === record.of)
              .map((value) => ({ value, label: words.subjects[value] }))}
            onChange={(of) => form.choose({ ...record, of })}
          />
        )}
        <Choice
          label={words.hazard}
          value={record.hazard}
          options={hazards.map((value) => ({ value, label: words.hazards[value] }))}
          onChange={(hazard) => form.choose({ ...record, hazard })}
        />
        <div className="actions">
          {check && (
            <Button writes weight="plain" onPress={() => archive(!check.archived)}>
              {check.archived ? words.takeUp : words.giveUp}
            </Button>
          )}
          {check && starting && (
            <Button
              writes
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
          <Button writes type="submit" weight="primary">
            {common.save}
          </Button>
        </div>
      </Form>
    </div>
  );
}
