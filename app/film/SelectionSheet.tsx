import { useEffect, useState } from 'react';
import type { LaidRun } from '../../src/layout';
import { parseLength, um } from '../../src/units';
import { pinCommand, takeOffCommand, turnCommand } from '../commands';
import { Button } from '../parts/Button';
import { CommandButton } from '../parts/CommandButton';
import { Field } from '../parts/Field';
import { OrderCode } from '../parts/OrderCode';
import { useWays } from '../store/selectors';
import { select, useView } from '../store/view';
import { useWords } from '../words';
import { area, typedLength } from '../words/format';
import { move, useHeld } from './drag';

/** What is selected opens from the bottom edge: its place, by figures too, and what can be done with it. */
export function SelectionSheet({ run }: { run: LaidRun }) {
  const { film: words, commands, common } = useWords();
  const ways = useWays();
  const selected = useView((state) => state.selected);
  const held = useHeld((state) => state.held);
  const lying = run.copies.find((copy) => copy.id === selected);
  if (!lying) return null;
  const copy = held?.copy.id === lying.id ? held.copy : lying;
  return (
    <section className="selection-sheet" data-keys="film" aria-label={`${copy.order.code} ${copy.number}`}>
      <p className="selection-name">
        <OrderCode code={`${copy.order.code} ${copy.number}`} tint={copy.order.tint} />
        <strong>
          {copy.order.name}, {copy.transfer.name}
        </strong>
        <span className="quiet">{area(copy.width, copy.length, ways)}</span>
      </p>
      <PlaceField
        key={`x ${copy.id}`}
        label={words.across}
        value={typedLength(copy.x, ways)}
        onPlace={(x) => move(copy.id, (now) => ({ ...now, x: um(x) }))}
      />
      <PlaceField
        key={`y ${copy.id}`}
        label={words.along}
        value={typedLength(copy.y, ways)}
        onPlace={(y) => move(copy.id, (now) => ({ ...now, y: um(y) }))}
      />
      <div className="actions">
        <CommandButton command={turnCommand} />
        <CommandButton command={pinCommand} label={copy.pinned ? commands.unpin : commands.pin} />
        <CommandButton command={takeOffCommand} />
        <Button weight="plain" onPress={() => select(null)}>
          {common.close}
        </Button>
      </div>
    </section>
  );
}

/** One coordinate of the copy, typed and taken over with Enter or when the field is left. */
function PlaceField({
  label,
  value,
  onPlace,
}: {
  label: string;
  value: string;
  onPlace: (place: number) => void;
}) {
  const { lengthProblems } = useWords();
  const { unit } = useWays();
  const [text, setText] = useState(value);
  useEffect(() => setText(value), [value]);
  const read = parseLength(text, unit, 'zero');
  const place = () => {
    if (text === value) return;
    if (read.ok) onPlace(read.value);
    // What may not be is not kept: the field tells where the copy lies.
    setText(value);
  };
  return (
    <form
      className="place-field"
      onSubmit={(event) => {
        event.preventDefault();
        place();
      }}
      onBlur={place}
    >
      <Field
        label={`${label} (${unit})`}
        value={text}
        onChange={setText}
        inputMode="decimal"
        problem={read.ok ? null : lengthProblems[read.problem]}
      />
    </form>
  );
}
