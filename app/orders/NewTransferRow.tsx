import { useState } from 'react';
import { edits } from '../../src/editing';
import type { Order } from '../../src/model';
import { Button } from '../parts/Button';
import { Field } from '../parts/Field';
import { useReader } from '../store/reader';
import { act } from '../store/shop';
import { copiesFrom, sizeAsTyped, name as tidyName } from './entries';

const blank = { name: '', width: '', height: '', count: '1' };

/** A transfer typed by hand; what cannot be used is said beside its field. */
export function NewTransferRow({ order }: { order: Order }) {
  const reader = useReader();
  const { orders: words, common } = reader.words;
  const [open, setOpen] = useState(false);
  const [typed, setTyped] = useState(blank);
  const [tried, setTried] = useState(false);
  if (!open) {
    return (
      <Button writes weight="plain" onPress={() => setOpen(true)}>
        {words.addTransfer}
      </Button>
    );
  }
  const name = tidyName.read(typed.name, reader);
  const width = sizeAsTyped.read(typed.width, reader);
  const height = sizeAsTyped.read(typed.height, reader);
  const count = copiesFrom(1).read(typed.count, reader);
  const problem = (entry: { ok: boolean; problem?: string }) =>
    (tried && !entry.ok ? entry.problem : null) ?? null;
  const set = (field: keyof typeof blank) => (value: string) => setTyped({ ...typed, [field]: value });
  const close = () => {
    setTyped(blank);
    setTried(false);
    setOpen(false);
  };
  const add = () => {
    setTried(true);
    if (!name.ok || !width.ok || !height.ok || !count.ok) return;
    act(
      edits.addTransfer(
        order.id,
        {
          name: name.value,
          width: width.value.length,
          height: height.value.length,
          typed: { width: width.value.typed, height: height.value.typed },
          turn: 'quarter',
        },
        count.value,
      ),
    );
    close();
  };
  return (
    <form
      className="new-transfer"
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <Field label={words.transfer} value={typed.name} onChange={set('name')} problem={problem(name)} />
      <Field label={words.width} value={typed.width} onChange={set('width')} problem={problem(width)} />
      <Field label={words.height} value={typed.height} onChange={set('height')} problem={problem(height)} />
      <Field
        label={words.count}
        value={typed.count}
        onChange={set('count')}
        problem={problem(count)}
        inputMode="numeric"
      />
      <div className="actions">
        <Button writes type="submit" weight="primary">
          {common.add}
        </Button>
        <Button onPress={close}>{common.cancel}</Button>
      </div>
    </form>
  );
}
