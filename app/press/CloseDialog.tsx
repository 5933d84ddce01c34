import { useState } from 'react';
import { edits } from '../../src/editing';
import { proposeClosing } from '../../src/log';
import { asInstant, type Book, type Closing, type Run } from '../../src/model';
import { blanksOfRun, blanksTaken } from '../../src/stock';
import { Field } from '../parts/Field';
import { FieldGroup } from '../parts/FieldGroup';
import { Form } from '../parts/Form';
import { useForm } from '../parts/fields/useForm';
import { useCoverageOf } from '../store/coverage';
import { settingsOrFirst, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { today } from '../store/today';
import { notify, openDialog } from '../store/view';
import { FormActions } from '../windows/FormActions';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { dayAndTime } from '../words/format';
import { closingEntry, closingTable, counted, type Proposal, toldIn } from './close-form';

/**
 * What a run really took, beside what was planned; closing it takes that out of stock and keeps it in the log. Of a run that is closed
 * already, what was told of it is corrected.
 */
export function CloseDialog({ id }: { id: string }) {
  const words = useAllWords();
  const book = useShop((shop) => shop.book);
  const coverageOf = useCoverageOf();
  // As it is when the window opens: a check that ends meanwhile must not type over a hand.
  const [proposal] = useState(
    () =>
      book.closing[id] ??
      proposeClosing(book, id, settingsOrFirst(book), coverageOf, {
        now: asInstant(new Date()),
        day: today(),
      }),
  );
  const run = book.run[id];
  const isClosed = run?.state === 'closed';
  const title = isClosed ? words.closing.correctTitle : words.closing.title;
  return (
    <Window title={title(run?.name ?? '')}>
      {(isClosed || run?.state === 'pressed') && proposal ? (
        <CloseForm book={book} run={run} proposal={proposal} />
      ) : (
        <p>{words.closing.notPressed}</p>
      )}
    </Window>
  );
}

function CloseForm({ book, run, proposal }: { book: Book; run: Run; proposal: Proposal }) {
  const { closing: words, spoil } = useAllWords();
  const ways = useWays();
  const { station } = settingsOrFirst(book);
  const isClosed = run.state === 'closed';
  const form = useForm(closingTable(station), () => closingEntry(proposal), ways);
  const [blanks, setBlanks] = useState(() =>
    (isClosed ? blanksTaken : blanksOfRun)(book, run).map((each) => ({ ...each, typed: String(each.used) })),
  );
  const [tried, setTried] = useState(false);
  const problemOf = (typed: string) => {
    const count = counted.read(typed, form.reader);
    return count.ok ? null : count.problem;
  };
  const save = (read: Proposal) => {
    if (blanks.some(({ typed }) => problemOf(typed) !== null)) return;
    const taken = blanks.map(({ blank, order, spoiled, typed }) => ({
      blank: blank.id,
      order: order.id,
      used: Number(typed),
      spoiled,
    }));
    act(isClosed ? edits.correctClosing(read, taken) : edits.closeRun(read, taken));
    notify('plain', (isClosed ? words.corrected : words.done)(run.name));
    openDialog(null);
  };
  const { spoiled } = proposal;
  return (
    <Form
      onSubmit={() => {
        setTried(true);
        form.submit(save);
      }}
    >
      <p className="wide-row quiet">{isClosed ? words.correctLead : words.lead}</p>
      <FieldGroup title={words.figures}>
        {form.fields('film', 'sheets', 'colour', 'white', 'powder')}
      </FieldGroup>
      {blanks.length > 0 && (
        <FieldGroup title={words.blanks}>
          {blanks.map(({ blank, order, spoiled: lost, typed }, at) => (
            <Field
              key={`${blank.id} ${order.id}`}
              label={words.blank(blank.name, order.code)}
              value={typed}
              inputMode="decimal"
              onChange={(value) =>
                setBlanks(blanks.map((each, index) => (index === at ? { ...each, typed: value } : each)))
              }
              problem={tried ? problemOf(typed) : null}
              {...(lost > 0 ? { hint: words.blankSpoiled(lost, ways) } : {})}
            />
          ))}
        </FieldGroup>
      )}
      <FieldGroup title={words.time}>{form.fields('printer', 'hands', 'press', 'oven')}</FieldGroup>
      <FieldGroup title={words.spoiled}>
        <ul className="wide-row">
          {spoiled.length === 0 && <li className="quiet">{words.noneSpoiled}</li>}
          {spoiled.map(({ stage, reason, copies }) => (
            <li key={`${stage} ${reason}`}>{words.spoiledLine(copies, spoil.stages[stage], reason, ways)}</li>
          ))}
        </ul>
      </FieldGroup>
      <FieldGroup
        isFolded
        title={words.lots}
        told={form.told('lot-film', 'lot-colour', 'lot-white', 'lot-powder')}
      >
        {form.fields('lot-film', 'lot-colour', 'lot-white', 'lot-powder')}
      </FieldGroup>
      <FieldGroup title={words.air}>{form.fields('temperature', 'humidity', 'notes')}</FieldGroup>
      <Earlier id={run.id} />
      <FormActions save={isClosed ? words.saveCorrection : words.save} />
    </Form>
  );
}

const none: Closing['earlier'] = [];

/** What was told of a closed run before it was corrected, the latest first. */
function Earlier({ id }: { id: string }) {
  const { closing: words } = useAllWords();
  const ways = useWays();
  const earlier = useShop(({ book }) => (book.closing[id] ?? book.reopened[id])?.earlier ?? none);
  if (earlier.length === 0) return null;
  return (
    <details className="wide-row">
      <summary>{words.earlier(earlier.length, ways)}</summary>
      <ul>
        {earlier.toReversed().map((version) => (
          <li key={version.changed}>
            <b>{dayAndTime(version.changed, ways)}</b>: {toldIn(version, words, ways).join('; ')}
          </li>
        ))}
      </ul>
    </details>
  );
}
