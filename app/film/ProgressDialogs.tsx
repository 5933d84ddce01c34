import { useState } from 'react';
import { edits } from '../../src/editing';
import { sheetStart } from '../../src/layout';
import { type Micrometres, um } from '../../src/units';
import { Field } from '../parts/Field';
import { Form } from '../parts/Form';
import { shortLength } from '../parts/fields/lengths';
import { whole } from '../parts/fields/numbers';
import { useReader } from '../store/reader';
import { useLaidRun, useWays } from '../store/selectors';
import { act } from '../store/shop';
import { notify, openDialog } from '../store/view';
import { FormActions } from '../windows/FormActions';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { typedLength } from '../words/format';

const place = shortLength('zero');
const sheetNumber = whole(1, 99_999, ({ runs }) => runs.stretchProblem);

/** A place along the film as typed: a length on a roll, a number of sheets on a stack. */
function usePlaceAlong(): (typed: string, edge: 'start' | 'end') => Micrometres | null {
  const run = useLaidRun();
  const reader = useReader();
  return (typed, edge) => {
    if (run?.film.kind === 'sheets') {
      const sheet = sheetNumber.read(typed, reader);
      return sheet.ok ? sheetStart(run.film, edge === 'start' ? sheet.value - 1 : sheet.value) : null;
    }
    const read = place.read(typed, reader);
    return read.ok ? read.value : null;
  };
}

/** "Printed to 1,240 mm": what is done stays, and the rest can be laid out anew behind it. */
export function PrintedDialog() {
  const { runs: words, common } = useAllWords();
  const run = useLaidRun();
  const ways = useWays();
  const read = usePlaceAlong();
  const [typed, setTyped] = useState('');
  const [tried, setTried] = useState(false);
  if (!run) return null;
  const to = read(typed, 'end');
  const isWithin = to !== null && to > 0 && to <= run.lengthUsed;
  const onSheets = run.film.kind === 'sheets';
  const save = () => {
    setTried(true);
    if (!isWithin) return;
    act(edits.printedTo(run.id, to));
    notify('plain', words.printedToNote);
    openDialog(null);
  };
  const most = onSheets ? '' : `${typedLength(run.lengthUsed, ways)} ${ways.unit}`;
  return (
    <Window title={words.printedTo}>
      <Form onSubmit={save}>
        <Field
          label={onSheets ? words.sheetsPrinted : words.lengthPrinted(ways.unit)}
          hint={words.printedToHint}
          value={typed}
          onChange={setTyped}
          inputMode="decimal"
          problem={tried && !isWithin ? words.withinRun(most) : null}
        />
        <FormActions save={common.save} />
      </Form>
    </Window>
  );
}

/** "Spoiled from - to": every copy touched waits again, and the film is not used twice. */
export function SpoiledDialog() {
  const { runs: words } = useAllWords();
  const run = useLaidRun();
  const ways = useWays();
  const read = usePlaceAlong();
  const [typed, setTyped] = useState({ from: '', to: '' });
  const [tried, setTried] = useState(false);
  if (!run) return null;
  const from = read(typed.from, 'start');
  const to = read(typed.to, 'end');
  const isStretch = from !== null && to !== null && to > from && from <= run.lengthUsed;
  const touched =
    from === null || to === null
      ? 0
      : run.copies.filter((copy) => copy.y < to && copy.y + copy.length > from).length;
  const save = () => {
    setTried(true);
    if (!isStretch) return;
    const spoiled = act(edits.spoil(run.id, { from, to: um(Math.min(to, run.lengthUsed)) }));
    notify('care', words.spoiledNote(spoiled?.result ?? 0, ways));
    openDialog(null);
  };
  const unit = run.film.kind === 'sheets' ? words.sheetNumber : ways.unit;
  return (
    <Window title={words.spoiled}>
      <Form onSubmit={save}>
        <Field
          label={words.from(unit)}
          value={typed.from}
          onChange={(value) => setTyped({ ...typed, from: value })}
          inputMode="decimal"
          problem={tried && from === null ? words.stretchProblem : null}
        />
        <Field
          label={words.to(unit)}
          value={typed.to}
          onChange={(value) => setTyped({ ...typed, to: value })}
          inputMode="decimal"
          problem={tried && !isStretch ? words.stretchProblem : null}
        />
        <p role="status">{words.touched(touched, ways)}</p>
        <FormActions save={words.putBack} />
      </Form>
    </Window>
  );
}
