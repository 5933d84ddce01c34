import { useState } from 'react';
import { edits } from '../../src/editing';
import { type Copy, openRuns, ordersByDue, type Run } from '../../src/model';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Field } from '../parts/Field';
import { useHeld } from '../parts/held';
import { OrderCode } from '../parts/OrderCode';
import { useOpenRun, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { openDialog, useView } from '../store/view';
import { CloseButton } from '../windows/CloseButton';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { dueDay, whole } from '../words/format';

/** A run's name and which of the waiting copies it lays out. */
export function RunDialog() {
  const { runs: words } = useAllWords();
  const open = useOpenRun();
  const book = useShop((shop) => shop.book);
  const [name, setName] = useState(open?.run.name ?? '');
  if (!open) return null;
  const { run } = open;
  const rename = () => {
    const tidy = name.trim();
    if (tidy !== '' && tidy !== run.name) act(edits.editRun(run.id, { name: tidy }));
  };
  return (
    <Window title={words.title}>
      <Field writes label={words.name} value={name} onChange={setName} onBlur={rename} />
      <Choice
        writes
        label={words.takes}
        value={run.takes}
        options={[
          { value: 'all', label: words.takesAll },
          { value: 'chosen', label: words.takesChosen },
        ]}
        onChange={(takes) => act(edits.editRun(run.id, { takes }))}
      />
      {run.takes === 'chosen' && <Chooser run={run} />}
      <div className="actions">
        {!run.printed && openRuns(book).length > 1 && (
          <Button
            writes
            weight="plain"
            onPress={() => {
              act(edits.removeRun(run.id));
              useView.setState({ run: null });
              openDialog(null);
            }}
          >
            {words.remove}
          </Button>
        )}
        <CloseButton />
      </div>
    </Window>
  );
}

/** The orders with copies that wait, each to be taken into the run or left for others. */
function Chooser({ run }: { run: Run }) {
  const { runs: words, orders } = useAllWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const [day, setDay] = useState('');
  const { isHeld, reason } = useHeld(true);
  const waiting = new Map<string, Copy[]>();
  const placed = new Map<string, number>();
  for (const copy of Object.values(book.copy)) {
    const order = book.transfer[copy.transfer]?.order;
    if (order && copy.state === 'waiting' && (copy.run === null || copy.run === run.id)) {
      waiting.set(order, [...(waiting.get(order) ?? []), copy]);
    }
    if (order && copy.state === 'placed') placed.set(order, (placed.get(order) ?? 0) + 1);
  }
  const listed = ordersByDue(book).filter(({ id }) => waiting.has(id) || placed.has(id));
  const take = (copies: readonly Copy[], into: boolean) =>
    act(
      edits.chooseCopies(
        into ? run.id : null,
        copies.map(({ id }) => id),
      ),
    );
  if (listed.length === 0) return <p className="quiet">{words.nothingWaits}</p>;
  return (
    <>
      <div className="due-by">
        <label>
          {words.dueBy} <input type="date" value={day} onChange={(event) => setDay(event.target.value)} />
        </label>
        <Button
          writes
          isDisabled={day === ''}
          onPress={() =>
            take(
              listed
                .filter(({ due }) => due !== null && due <= day)
                .flatMap(({ id }) => waiting.get(id) ?? []),
              true,
            )
          }
        >
          {words.takeDue}
        </Button>
      </div>
      <ul className="chooser">
        {listed.map((order) => {
          const copies = waiting.get(order.id) ?? [];
          const taken = copies.filter((copy) => copy.run === run.id).length;
          return (
            <li key={order.id}>
              <label>
                <input
                  type="checkbox"
                  checked={taken === copies.length && taken > 0}
                  disabled={isHeld || copies.length === 0}
                  {...reason}
                  onChange={(event) => take(copies, event.target.checked)}
                />
                <OrderCode code={order.code} tint={order.tint} />
                <span>{order.name}</span>
                <span className="quiet small">
                  {order.due ? orders.dueOn(dueDay(order.due, ways)) : orders.noDue}
                </span>
                <span className="small">
                  {copies.length > 0 && words.taken(whole(taken, ways), whole(copies.length, ways))}
                  {copies.length > 0 && placed.has(order.id) && ', '}
                  {placed.has(order.id) && words.onFilm(placed.get(order.id) ?? 0, ways)}
                </span>
              </label>
            </li>
          );
        })}
      </ul>
    </>
  );
}
