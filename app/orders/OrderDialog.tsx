import { useState } from 'react';
import { edits, type OrderFields } from '../../src/editing';
import {
  commonFabric,
  type FabricLine,
  garmentsByOrder,
  type Order,
  tellsFabric,
  transfersByOrder,
} from '../../src/model';
import { FABRICS, type Fabric } from '../../src/units';
import { QuotesGiven } from '../panels/QuotesGiven';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Field } from '../parts/Field';
import { useHeld } from '../parts/held';
import { Tick } from '../parts/Tick';
import { act, useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { CloseButton } from '../windows/CloseButton';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import './orders.css';

/** Whom an order is for, when, what it waits for, and how far it is. */
export function OrderDialog({ id }: { id: string }) {
  const order = useShop(({ book }) => book.order[id]);
  return order ? <OrderForm order={order} /> : null;
}

function OrderForm({ order }: { order: Order }) {
  const { orders: words, press } = useAllWords();
  const { isHeld, reason } = useHeld(true);
  const edit = (fields: Partial<OrderFields>) => act(edits.editOrder(order.id, fields));
  return (
    <Window title={order.name}>
      <div className="fields">
        <Typed label={words.contact} value={order.contact} onEntry={(contact) => edit({ contact })} />
        <div className="field">
          <label htmlFor="due-time">{words.dueTime}</label>
          <input
            id="due-time"
            type="time"
            disabled={isHeld}
            {...reason}
            value={order.dueTime ?? ''}
            onChange={(event) => edit({ dueTime: event.target.value === '' ? null : event.target.value })}
          />
        </div>
        <Choice
          writes
          label={words.handover}
          value={order.handover}
          options={[
            { value: 'collect', label: words.handovers.collect },
            { value: 'ship', label: words.handovers.ship },
          ]}
          onChange={(handover) => edit({ handover })}
        />
        <Choice
          writes
          label={press.wants}
          value={order.wants}
          options={[
            { value: 'garments', label: press.wantsOf.garments },
            { value: 'transfers', label: press.wantsOf.transfers },
          ]}
          onChange={(wants) => edit({ wants })}
        />
        <LineFabrics order={order} />
        <Choice
          writes
          label={words.status}
          value={order.progress}
          options={[
            { value: 'open', label: words.statuses.open },
            { value: 'packed', label: words.statuses.packed },
            { value: 'collected', label: words.statuses.collected },
          ]}
          onChange={(progress) => edit({ progress })}
        />
        <Tick writes label={words.isRush} checked={order.rush} onChange={(rush) => edit({ rush })} />
        <Tick
          writes
          label={words.awaitsProof}
          checked={order.awaits.proof}
          onChange={(proof) => edit({ awaits: { ...order.awaits, proof } })}
        />
        <Tick
          writes
          label={words.awaitsBlanks}
          checked={order.awaits.blanks}
          onChange={(blanks) => edit({ awaits: { ...order.awaits, blanks } })}
        />
        <div className="field notes">
          <label htmlFor="notes">{words.notes}</label>
          <textarea
            id="notes"
            readOnly={isHeld}
            {...reason}
            defaultValue={order.notes}
            onBlur={(event) => edit({ notes: event.target.value.trim() })}
          />
        </div>
      </div>
      <QuotesGiven order={order.id} />
      <div className="actions">
        <Button onPress={() => openDialog({ kind: 'grid', order: order.id })}>{words.grid}</Button>
        <Button onPress={() => openDialog({ kind: 'names', order: order.id })}>{words.names}</Button>
        <CloseButton />
      </div>
    </Window>
  );
}

const NONE = 'none';

/** One fabric for all lines of an order: its garments, and transfers that no garments call for. */
function LineFabrics({ order }: { order: Order }) {
  const { press } = useAllWords();
  const book = useShop((shop) => shop.book);
  const lines: FabricLine[] = [
    ...(garmentsByOrder(book).get(order.id) ?? []),
    ...(transfersByOrder(book).get(order.id) ?? []).filter(tellsFabric),
  ];
  if (lines.length === 0) return null;
  const fabric = commonFabric(lines);
  const isUntold = lines.every((line) => line.fabric === null);
  return (
    <Choice<Fabric | typeof NONE>
      writes
      label={press.fabricOfLines}
      value={fabric ?? NONE}
      options={[
        ...(fabric === null
          ? [{ value: NONE as typeof NONE, label: isUntold ? press.untold : press.severalFabrics }]
          : []),
        ...FABRICS.map((value) => ({ value, label: press.fabrics[value] })),
      ]}
      onChange={(told) =>
        told !== NONE &&
        act(
          edits.tellFabric(
            lines.map((line) => line.id),
            told,
          ),
        )
      }
    />
  );
}

/** A line of text that is taken over when the field is left. */
function Typed({
  label,
  value,
  onEntry,
}: {
  label: string;
  value: string;
  onEntry: (typed: string) => void;
}) {
  const [typed, setTyped] = useState(value);
  return (
    <Field writes label={label} value={typed} onChange={setTyped} onBlur={() => onEntry(typed.trim())} />
  );
}
