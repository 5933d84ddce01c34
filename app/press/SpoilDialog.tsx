import { useState } from 'react';
import { edits } from '../../src/editing';
import { reasonsBefore } from '../../src/log';
import { asEntered, isPrinted, type Stage, stages } from '../../src/model';
import { Choice } from '../parts/Choice';
import { Field } from '../parts/Field';
import { Form } from '../parts/Form';
import { Tick } from '../parts/Tick';
import { useBenchRun } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { notify, openDialog } from '../store/view';
import { FormActions } from '../windows/FormActions';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';

const OTHER = '';

/** A copy came to nothing: it goes back on the list, and its garment may have to be bought again. */
export function SpoilDialog({ inHand, at }: { inHand: string | null; at: Stage }) {
  const { spoil: words } = useAllWords();
  const run = useBenchRun();
  const spoilage = useShop(({ book }) => book.spoilage);
  const [copy, setCopy] = useState(inHand);
  const [stage, setStage] = useState(at);
  const [reason, setReason] = useState('');
  const [other, setOther] = useState(false);
  const [garment, setGarment] = useState(false);
  const [tried, setTried] = useState(false);
  if (!run) return null;
  const spoiled = new Set<string>(
    Object.values(spoilage).flatMap((each) => (each.run === run.id ? [each.copy] : [])),
  );
  const copies = run.copies
    .filter(({ id }) => !spoiled.has(id))
    .toSorted((a, b) => a.order.code.localeCompare(b.order.code) || a.number - b.number);
  const chosen = copies.find(({ id }) => id === copy) ?? copies[0];
  const name = chosen ? `${chosen.order.code} ${chosen.number}` : '';
  const before = reasonsBefore(asEntered(Object.values(spoilage)), stage);
  const chosenReason = other ? OTHER : (before.find((text) => text === reason) ?? before[0] ?? OTHER);
  const why = chosenReason === OTHER ? reason.trim() : chosenReason;
  const save = () => {
    setTried(true);
    if (!chosen || why === '') return;
    act(edits.spoilCopy({ run: run.id, copy: chosen.id, stage, garment, reason: why }));
    notify('care', words.note(name));
    openDialog(null);
  };
  return (
    <Window title={words.title}>
      {!isPrinted(run) || !chosen ? (
        <p>{words.onlyPrinted}</p>
      ) : (
        <Form onSubmit={save}>
          <Choice
            label={words.copy}
            value={chosen.id as string}
            options={copies.map(({ id, order, number, transfer }) => ({
              value: id as string,
              label: `${order.code} ${number} · ${transfer.name}`,
            }))}
            onChange={setCopy}
          />
          <Choice
            label={words.stage}
            value={stage}
            options={stages.map((value) => ({ value, label: words.stages[value] }))}
            onChange={setStage}
          />
          {before.length > 0 && (
            <Choice
              label={words.reason}
              value={chosenReason}
              options={[
                ...before.map((text) => ({ value: text, label: text })),
                { value: OTHER, label: words.otherReason },
              ]}
              onChange={(text) => {
                setOther(text === OTHER);
                setReason(text === OTHER ? '' : text);
              }}
            />
          )}
          {(before.length === 0 || chosenReason === OTHER) && (
            <Field
              label={before.length > 0 ? words.newReason : words.reason}
              value={reason}
              onChange={setReason}
              problem={tried && reason.trim() === '' ? words.reasonNeeded : null}
            />
          )}
          {stage === 'press' && <Tick label={words.garment} checked={garment} onChange={setGarment} />}
          <FormActions save={words.save} />
        </Form>
      )}
    </Window>
  );
}
