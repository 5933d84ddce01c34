import { useState } from 'react';
import { changeBy, edits, type HandEntry } from '../../src/editing';
import { asId, type Book, type Film, isPrinted, type Supply } from '../../src/model';
import { amountOf, entryProblem, unitOf } from '../../src/stock';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Field } from '../parts/Field';
import { Form } from '../parts/Form';
import { useReader } from '../store/reader';
import { act, useShop } from '../store/shop';
import { notify } from '../store/view';
import { allWordsNow } from '../words';
import { amountIn, unitLabel } from './amounts';

type Kind = HandEntry['kind'];

/** What can happen to each sort of thing; powder alone is weighed out. */
const kindsFor = (item: Film | Supply): readonly Kind[] =>
  item.kind === 'powder'
    ? ['bought', 'weighed-out', 'returned', 'discarded', 'counted', 'spoiled']
    : ['bought', 'counted', 'discarded', 'spoiled', 'returned'];

const NO_RUN = '';

/** Enters what a hand did to an item. */
export function EntryForm({ item, book }: { item: Film | Supply; book: Book }) {
  const reader = useReader();
  const { stock: words } = reader.words;
  const [kind, setKind] = useState<Kind>('bought');
  const [typed, setTyped] = useState('');
  const [note, setNote] = useState('');
  const [run, setRun] = useState<string>(NO_RUN);
  const [problem, setProblem] = useState<string | null>(null);
  const unit = unitOf(item);
  const told = (amount: number) => words.amount(amount, unit, reader);
  const runs = Object.values(book.run).filter(
    (each) => each.state === 'locked' || (isPrinted(each) && each.state !== 'closed'),
  );
  const forRun = item.kind === 'powder' && (kind === 'weighed-out' || kind === 'returned') && runs.length > 0;
  const save = () => {
    const read = amountIn(unit).read(typed, reader);
    if (!read.ok) return setProblem(read.problem);
    if (read.value === 0 && kind !== 'counted') return setProblem(words.aboveZero);
    // As it is now: another tab may have taken it away since the window was opened.
    const now = useShop.getState().book;
    const entry = { kind, amount: read.value };
    const present = amountOf(now, item.id) ?? 0;
    const refused = entryProblem(now, item.id, changeBy(entry, present));
    if (refused !== null) {
      return setProblem(allWordsNow().stock.problems[refused](item.name, told(present)));
    }
    const of = forRun && run !== NO_RUN ? asId<'run'>(run) : null;
    act(edits.enterByHand(item.id, entry, { run: of, note: note.trim() }));
    notify('plain', words.entered(item.name, told(present + changeBy(entry, present))));
    setTyped('');
    setNote('');
    setProblem(null);
  };
  return (
    <section>
      <h3>{words.entry}</h3>
      <Form onSubmit={save}>
        <Choice
          label={words.happened}
          value={kind}
          options={kindsFor(item).map((value) => ({ value, label: words.entryKinds[value] }))}
          onChange={setKind}
        />
        <Field
          label={words.howMuch[unit](unitLabel(unit, reader))}
          value={typed}
          onChange={setTyped}
          inputMode="decimal"
          problem={problem}
        />
        {forRun && (
          <Choice
            label={words.forRun}
            value={run}
            options={[
              { value: NO_RUN, label: words.noRun },
              ...runs.map(({ id, name }) => ({ value: id as string, label: name })),
            ]}
            onChange={setRun}
          />
        )}
        <Field label={words.note} value={note} onChange={setNote} />
        {item.kind === 'powder' && <p className="wide-row caution small">{words.powderCaution}</p>}
        <div className="actions">
          <Button writes type="submit" weight="primary">
            {words.saveEntry}
          </Button>
        </div>
      </Form>
    </section>
  );
}
