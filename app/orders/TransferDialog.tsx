import { useState } from 'react';
import { edits } from '../../src/editing';
import { type Artwork, type Copy, copiesByTransfer, isFixed, type Transfer } from '../../src/model';
import { ShadeChoice } from '../panels/ShadeChoice';
import { Button } from '../parts/Button';
import { Field } from '../parts/Field';
import { useReader } from '../store/reader';
import { act, useShop } from '../store/shop';
import { type Design, openDialog } from '../store/view';
import { CloseButton } from '../windows/CloseButton';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { copiesFrom } from './entries';

/** A transfer as the design that other sizes are made of. */
const designOf = ({ name, width, height, shade }: Transfer, artwork: Artwork | null): Design => ({
  name,
  artwork,
  size: { width, height },
  shade,
});

/** What of a transfer is needed now and then: spare copies, fillers, the garment's colour. */
export function TransferDialog({ id }: { id: string }) {
  const { orders: words, designs } = useAllWords();
  const transfer = useShop(({ book }) => book.transfer[id]);
  const copies = useShop(({ book }) => copiesByTransfer(book).get(id)?.length ?? 0);
  const artwork = useShop(({ book }) =>
    transfer?.artwork ? (book.artwork[transfer.artwork] ?? null) : null,
  );
  if (!transfer) return null;
  return (
    <Window title={transfer.name}>
      <div className="fields" key={copies}>
        <Spares transfer={transfer} kind="over" label={words.overs} hint={words.oversHint} />
        <Spares transfer={transfer} kind="filler" label={words.fillers} hint={words.fillersHint} />
      </div>
      <ShadeChoice transfer={transfer} />
      <div className="actions">
        <Button
          onPress={() =>
            openDialog({ kind: 'design', order: transfer.order, design: designOf(transfer, artwork) })
          }
        >
          {designs.several}
        </Button>
        <CloseButton />
      </div>
    </Window>
  );
}

/** A number of copies beyond those that were ordered. */
function Spares({
  transfer,
  kind,
  label,
  hint,
}: {
  transfer: Transfer;
  kind: Copy['role'];
  label: string;
  hint: string;
}) {
  const reader = useReader();
  const count = useShop(
    ({ book }) =>
      Object.values(book.copy).filter((copy) => copy.transfer === transfer.id && copy.role === kind).length,
  );
  const fixed = useShop(
    ({ book }) =>
      Object.values(book.copy).filter(
        (copy) => copy.transfer === transfer.id && copy.role === kind && isFixed(book, copy),
      ).length,
  );
  const [typed, setTyped] = useState(String(count));
  const read = copiesFrom(0, fixed).read(typed, reader);
  const enter = () => {
    if (read.ok && read.value !== count) {
      act(edits.setCount(transfer.id, read.value, kind));
    }
  };
  return (
    <Field
      writes
      label={label}
      hint={hint}
      value={typed}
      onChange={setTyped}
      onBlur={enter}
      inputMode="decimal"
      problem={read.ok ? null : read.problem}
    />
  );
}
