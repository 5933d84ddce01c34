import { useState } from 'react';
import { edits } from '../../src/editing';
import { proposeClosing } from '../../src/log';
import type { Book, Instant, Run } from '../../src/model';
import { blanksOfRun } from '../../src/stock';
import { Field } from '../parts/Field';
import { Form } from '../parts/Form';
import { useCoverageOf } from '../store/coverage';
import { settingsOrFirst, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { today } from '../store/today';
import { notify, openDialog } from '../store/view';
import { FormActions } from '../windows/FormActions';
import { Window } from '../windows/Window';
import { useWords } from '../words';
import { filmLength, inkVolume, powderMass, spoken } from '../words/format';
import { type CloseProblems, formOf, lotFields, type Proposal, readForm, rollUnit } from './close-form';

/** What a run really took, beside what was planned; closing it takes that out of stock and keeps it in the log. */
export function CloseDialog({ id }: { id: string }) {
  const words = useWords();
  const book = useShop((shop) => shop.book);
  const coverageOf = useCoverageOf();
  // As it is when the window opens: a check that ends meanwhile must not type over a hand.
  const [proposal] = useState(() =>
    proposeClosing(book, id, settingsOrFirst(book), coverageOf, {
      now: new Date().toISOString() as Instant,
      day: today(),
    }),
  );
  const run = book.run[id];
  return (
    <Window title={words.closing.title(run?.name ?? '')}>
      {run?.state === 'pressed' && proposal ? (
        <CloseForm book={book} run={run} proposal={proposal} />
      ) : (
        <p>{words.closing.notPressed}</p>
      )}
    </Window>
  );
}

function CloseForm({ book, run, proposal }: { book: Book; run: Run; proposal: Proposal }) {
  const { closing: words, spoil } = useWords();
  const ways = useWays();
  const { station } = settingsOrFirst(book);
  const [form, setForm] = useState(() => formOf(proposal, ways, station));
  const [blanks, setBlanks] = useState(() =>
    blanksOfRun(book, run).map((each) => ({ ...each, typed: String(each.used) })),
  );
  const [problems, setProblems] = useState<CloseProblems>({});
  const [tried, setTried] = useState(false);
  const isCount = (typed: string) => /^\s*\d{1,5}\s*$/.test(typed);
  const save = () => {
    setTried(true);
    const read = readForm(form, proposal, ways, station);
    setProblems(read.ok ? {} : read.problem);
    if (!read.ok || !blanks.every(({ typed }) => isCount(typed))) return;
    const taken = blanks.map(({ blank, order, spoiled, typed }) => ({
      blank: blank.id,
      order: order.id,
      used: Number(typed),
      spoiled,
    }));
    act(edits.closeRun(read.value, taken));
    notify('plain', words.done(run.name));
    openDialog(null);
  };
  type Name = Exclude<keyof typeof form, 'lots'>;
  const field = (name: Name, label: string, hint?: string) => (
    <Field
      key={name}
      label={label}
      value={form[name]}
      onChange={(value) => setForm({ ...form, [name]: value })}
      problem={problems[name] ?? null}
      {...(name === 'notes' ? {} : { inputMode: 'decimal' as const })}
      {...(hint ? { hint } : {})}
    />
  );
  const { planned, spoiled } = proposal;
  const onRoll = proposal.film.kind === 'roll';
  const ink = (amount: string | null) => (amount === null ? words.unplanned : words.planned(amount));
  const time = (name: 'printer' | 'hands' | 'press' | 'oven') =>
    field(name, words[name], words.plannedTime(spoken(planned.time[name], ways)));
  const powderHint =
    proposal.actual.powder !== null && proposal.actual.powder !== planned.powder
      ? words.weighedOut
      : ink(planned.powder === null ? null : powderMass(planned.powder, ways));
  return (
    <Form onSubmit={save}>
      <p className="wide-row quiet">{words.lead}</p>
      <h3 className="wide-row">{words.figures}</h3>
      {field(
        'film',
        onRoll ? words.film(rollUnit(ways)) : words.sheets,
        words.planned(onRoll ? filmLength(planned.film, ways) : String(planned.sheets)),
      )}
      {field('colour', words.colour, ink(planned.colour === null ? null : inkVolume(planned.colour, ways)))}
      {field('white', words.white, ink(planned.white === null ? null : inkVolume(planned.white, ways)))}
      {field('powder', words.powder, powderHint)}
      {blanks.length > 0 && <h3 className="wide-row">{words.blanks}</h3>}
      {blanks.map(({ blank, order, spoiled: lost, typed }, at) => (
        <Field
          key={`${blank.id} ${order.id}`}
          label={words.blank(blank.name, order.code)}
          value={typed}
          inputMode="decimal"
          onChange={(value) =>
            setBlanks(blanks.map((each, index) => (index === at ? { ...each, typed: value } : each)))
          }
          problem={tried && !isCount(typed) ? words.whole : null}
          {...(lost > 0 ? { hint: words.blankSpoiled(lost, ways) } : {})}
        />
      ))}
      <h3 className="wide-row">{words.time}</h3>
      {time('printer')}
      {time('hands')}
      {time('press')}
      {station.curer === 'oven' && time('oven')}
      <h3 className="wide-row">{words.spoiled}</h3>
      <ul className="wide-row">
        {spoiled.length === 0 && <li className="quiet">{words.noneSpoiled}</li>}
        {spoiled.map(({ stage, reason, copies }) => (
          <li key={`${stage} ${reason}`}>{words.spoiledLine(copies, spoil.stages[stage], reason, ways)}</li>
        ))}
      </ul>
      <h3 className="wide-row">{words.lots}</h3>
      {lotFields.map((name) => (
        <Field
          key={name}
          label={words.lotOf[name]}
          value={form.lots[name]}
          onChange={(value) => setForm({ ...form, lots: { ...form.lots, [name]: value } })}
        />
      ))}
      <h3 className="wide-row">{words.air}</h3>
      {field('temperature', words.temperature(`°${station.temperature}`))}
      {field('humidity', words.humidity)}
      {field('notes', words.notes)}
      <FormActions save={words.save} />
    </Form>
  );
}
