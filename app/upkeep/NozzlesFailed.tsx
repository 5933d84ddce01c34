import { useState } from 'react';
import type { Failed } from '../../src/editing';
import { edits } from '../../src/editing';
import type { CheckState } from '../../src/upkeep';
import { Button } from '../parts/Button';
import { Form } from '../parts/Form';
import { useForm } from '../parts/fields/useForm';
import { useReader } from '../store/reader';
import { act } from '../store/shop';
import { today } from '../store/today';
import { stateName } from '../store/upkeep';
import { failedEntry, failedTable } from './failed-form';
import type { Initials } from './initials';

/** A nozzle check that failed: the minutes and the ink that cleaning took. The check stays due until it passes. */
export function NozzlesFailed({
  of,
  initials,
  note,
  onNoted,
}: {
  of: CheckState;
  initials: Initials;
  note: string;
  onNoted: (said: string) => void;
}) {
  const reader = useReader();
  const { upkeep: words } = reader.words;
  const [isOpen, setIsOpen] = useState(false);
  const form = useForm(failedTable, () => failedEntry, reader);
  const save = (failed: Failed) => {
    const by = initials();
    if (by === null) return;
    const name = stateName(of, reader.words);
    const { check, machine } = of;
    const noted = { check: check.id, machine: machine?.id ?? null, name, note };
    act(edits.noteFailedCheck(noted, failed, { by, day: today() }));
    form.begin(failedEntry);
    setIsOpen(false);
    onNoted(words.notedFailed(name));
  };
  if (!isOpen)
    return (
      <Button writes weight="plain" onPress={() => setIsOpen(true)}>
        {words.failed}
      </Button>
    );
  return (
    <div className="check-failed">
      <Form onSubmit={() => form.submit(save)}>
        <div className="fields">{form.all()}</div>
        <p className="hint">{words.failedHint}</p>
        <div className="actions">
          <Button onPress={() => setIsOpen(false)}>{reader.words.common.cancel}</Button>
          <Button writes type="submit">
            {words.noteFailed}
          </Button>
        </div>
      </Form>
    </div>
  );
}
