import { useState } from 'react';
import { edits } from '../../src/editing';
import { type LaidCopy, type LaidRun, turnedInPlace } from '../../src/layout';
import { openRuns } from '../../src/model';
import { type Angle, degreesOf, parseAngle } from '../../src/units';
import {
  alignAcrossCommand,
  alignAlongCommand,
  pinCommand,
  selectOrderCommand,
  takeOffCommand,
  tightenCommand,
  turnCommand,
  zoomToSelectionCommand,
} from '../commands';
import { CommandButton } from '../commands/CommandButton';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Field } from '../parts/Field';
import { type Codec, told } from '../parts/fields/codec';
import { shortLength } from '../parts/fields/lengths';
import { OrderCode } from '../parts/OrderCode';
import { useNarrow } from '../parts/useNarrow';
import { move, useHeld } from '../store/held';
import { useReader } from '../store/reader';
import { useOrdersOf, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { select, useView } from '../store/view';
import { useWords } from '../words';
import { area, typedLength, typedNumber } from '../words/format';

/** What is selected opens from the bottom edge: its place, by figures too, and what can be done with it. */
export function SelectionSheet({ run }: { run: LaidRun }) {
  const { film: words, common } = useWords();
  const ways = useWays();
  const selected = useView((state) => state.selected);
  const held = useHeld((state) => state.held);
  const narrow = useNarrow();
  const orders = useOrdersOf(run);
  const lying = run.copies.filter((copy) => selected.has(copy.id));
  const copies = lying.map((copy) => held?.copies.find(({ id }) => id === copy.id) ?? copy);
  const [copy] = copies;
  if (!copy) return null;
  const many = copies.length > 1;
  const place = !many && !copy.fixed && <Place copy={copy} />;
  const name = many ? words.selected(copies.length, ways) : `${copy.order.code} ${copy.number}`;
  return (
    <section className="selection-sheet" data-keys="film" aria-label={name}>
      <p className="selection-name">
        {many ? (
          <strong>{name}</strong>
        ) : (
          <>
            <OrderCode code={name} tint={copy.order.tint} />
            <strong>
              {orders[copy.order.id]?.name}, {copy.transfer.name}
            </strong>
            <span className="quiet">{area(copy.width, copy.length, ways)}</span>
          </>
        )}
        {copies.some(({ fixed }) => fixed) && <span className="care small">{words.fixed}</span>}
      </p>
      {!narrow && place}
      <div className="actions">
        {many ? (
          <>
            <CommandButton command={alignAcrossCommand} />
            <CommandButton command={alignAlongCommand} />
          </>
        ) : (
          <CommandButton command={turnCommand} />
        )}
        <CommandButton command={pinCommand} label={copies.every(({ pinned }) => pinned) ? 'unpin' : 'pin'} />
        <CommandButton command={takeOffCommand} />
        <CommandButton command={tightenCommand} weight="plain" />
        <CommandButton command={selectOrderCommand} weight="plain" />
        <CommandButton command={zoomToSelectionCommand} weight="plain" />
        <MoveToRun run={run} copies={copies} />
        {narrow && place}
        <Button weight="plain" onPress={() => select()}>
          {common.close}
        </Button>
      </div>
    </section>
  );
}

function Place({ copy }: { copy: LaidCopy }) {
  const { film: words } = useWords();
  const ways = useWays();
  return (
    <>
      <PlaceField
        key={`x ${copy.id}`}
        label={`${words.across} (${ways.unit})`}
        value={typedLength(copy.x, ways)}
        codec={shortLength('zero')}
        onPlace={(x) => move([copy.id], (now) => ({ ...now, x }))}
      />
      <PlaceField
        key={`y ${copy.id}`}
        label={`${words.along} (${ways.unit})`}
        value={typedLength(copy.y, ways)}
        codec={shortLength('zero')}
        onPlace={(y) => move([copy.id], (now) => ({ ...now, y }))}
      />
      <PlaceField
        key={`angle ${copy.id}`}
        label={`${words.turned} (°)`}
        value={typedNumber(degreesOf(copy.angle), ways.locale, 1)}
        codec={angleCodec}
        onPlace={(angle) => move([copy.id], (now) => turnedInPlace(now, angle))}
      />
    </>
  );
}

/** Sends the selected copies to another draft, where they wait for a place. */
function MoveToRun({ run, copies }: { run: LaidRun; copies: readonly LaidCopy[] }) {
  const { film: words } = useWords();
  const book = useShop((shop) => shop.book);
  const others = openRuns(book).filter((other) => other.id !== run.id && other.state === 'draft');
  if (others.length === 0 || copies.some(({ fixed }) => fixed)) return null;
  return (
    <Choice
      writes
      label={words.moveTo}
      value="none"
      options={[
        { value: 'none', label: '—' },
        ...others.map(({ id, name }) => ({ value: id as string, label: name })),
      ]}
      onChange={(target) => {
        const other = others.find(({ id }) => id === target);
        if (!other) return;
        act(
          edits.moveToRun(
            other.id,
            copies.map(({ id }) => id),
          ),
        );
        select();
      }}
    />
  );
}

const angleCodec: Pick<Codec<Angle>, 'read'> = {
  read: (text, { words }) => told(parseAngle(text), words.film.angleProblems),
};

/** One figure of where the copy lies, typed and taken over with Enter or when the field is left. */
function PlaceField<Value>({
  label,
  value,
  codec,
  onPlace,
}: {
  label: string;
  value: string;
  codec: Pick<Codec<Value>, 'read'>;
  onPlace: (place: Value) => void;
}) {
  const reader = useReader();
  // What is typed holds as long as what it was typed over. No effect puts it back: one that comes late would do so to what is typed by then.
  const [typed, setTyped] = useState({ over: value, text: value });
  const text = typed.over === value ? typed.text : value;
  const setText = (next: string) => setTyped({ over: value, text: next });
  const read = codec.read(text, reader);
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
        writes
        label={label}
        value={text}
        onChange={setText}
        inputMode="decimal"
        problem={read.ok ? null : read.problem}
      />
    </form>
  );
}
