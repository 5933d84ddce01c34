import { useState } from 'react';
import { edits } from '../../src/editing';
import type { Order } from '../../src/model';
import { Button } from '../parts/Button';
import { Field } from '../parts/Field';
import { useWays } from '../store/selectors';
import { act } from '../store/shop';
import { useWords } from '../words';
import { readCount, readName, readSize, typedWithUnit } from './entries';

const blank = { name: '', width: '', height: '', count: '1' };

/** A transfer typed by hand; what cannot be used is said beside its field. */
export function NewTransferRow({ order }: { order: Order }) {
  const { orders: words, common } = useWords();
  const ways = useWays();
  const [open, setOpen] = useState(false);
  const [typed, setTyped] = useState(blank);
  const [tried, setTried] = useState(false);
  if (!open) {
    return (
      <Button weight="plain" onPress={() => setOpen(true)}>
        {words.addTransfer}
      </Button>
    );
  }
  const name = readName(typed.name);
  const width = readSize(typed.width, ways);
  const height = readSize(typed.height, ways);
  const count = readCount(typed.count, ways);
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
    const sizes = {
      width: typedWithUnit(typed.width.trim(), ways.unit),
      height: typedWithUnit(typed.height.trim(), ways.unit),
    };
    act(
      edits.addTransfer(
        order.id,
        { name: name.value, width: width.value, height: height.value, typed: sizes, turn: 'quarter' },
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
        inputMode="decimal"
      />
      <div className="actions">
        <Button type="submit" weight="primary">
          {common.add}
        </Button>
        <Button onPress={close}>{common.cancel}</Button>
      </div>
    </form>
  );
}
