import { edits, inPrint } from '../../src/editing';
import { tooLargeFor } from '../../src/layout';
import type { Micrometres } from '../../src/units';
import { GradeButton } from '../panels/GradeButton';
import { Button } from '../parts/Button';
import { Check } from '../parts/Check';
import { EntryCell } from '../parts/EntryCell';
import { useOpenRun, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { notify, openDialog } from '../store/view';
import { useWords } from '../words';
import { ArtworkAdvice } from './ArtworkAdvice';
import { ArtworkCell } from './ArtworkCell';
import { giveArtwork } from './artwork';
import { readCount, readName, readSize, typedWithUnit } from './entries';
import type { OrderLine } from './order-lines';
import { useFileDrop } from './useFileDrop';

/** One transfer: artwork, name, size, copies. A PNG dropped anywhere on the row becomes its artwork. */
export function TransferRow({ transfer, count, spare, placed }: Extract<OrderLine, { kind: 'transfer' }>) {
  const { orders: words } = useWords();
  const ways = useWays();
  const film = useOpenRun()?.film;
  const tooLarge = film && tooLargeFor(film, transfer);
  const { dropping, target } = useFileDrop(([file]) => {
    if (file) void giveArtwork(transfer.id, file);
  });
  const of = (label: string) => `${label}: ${transfer.name}`;
  const enterSize = (side: 'width' | 'height') => (size: Micrometres, typed: string) =>
    act(
      edits.editTransfer(transfer.id, {
        [side]: size,
        typed: { ...transfer.typed, [side]: typedWithUnit(typed, ways.unit) },
      }),
    );
  const remove = () => {
    if (inPrint(useShop.getState().book, transfer.id)) {
      notify('care', words.inPrint(transfer.name));
      return;
    }
    act(edits.removeTransfer(transfer.id));
    notify('plain', words.removedTransfer(transfer.name));
  };
  return (
    <section
      aria-label={transfer.name}
      className={dropping ? 'transfer-row dropping' : 'transfer-row'}
      {...target}
    >
      <div>
        <ArtworkCell transfer={transfer} />
      </div>
      <div>
        <GradeButton transfer={transfer} />
      </div>
      <EntryCell
        label={of(words.transfer)}
        text={transfer.name}
        read={readName}
        onEntry={(name) => act(edits.editTransfer(transfer.id, { name }))}
      />
      <EntryCell
        label={of(words.width)}
        text={transfer.typed.width}
        read={(typed) => readSize(typed, ways)}
        onEntry={enterSize('width')}
      />
      <EntryCell
        label={of(words.height)}
        text={transfer.typed.height}
        read={(typed) => readSize(typed, ways)}
        onEntry={enterSize('height')}
      />
      <EntryCell
        label={of(words.count)}
        text={String(count)}
        inputMode="numeric"
        read={(typed) => readCount(typed, ways)}
        onEntry={(wanted) => act(edits.setCount(transfer.id, wanted, 'ordered'))}
      />
      <Check
        label={of(words.mayTurn)}
        short={words.mayTurn}
        checked={transfer.turn === 'quarter'}
        onChange={(may) => act(edits.editTransfer(transfer.id, { turn: may ? 'quarter' : 'fixed' }))}
      />
      <span className={placed === count + spare ? 'quiet small placed' : 'small placed'}>
        {words.all(placed, count + spare, ways)}
      </span>
      <div className="row-acts">
        <Button
          weight="plain"
          aria-label={words.moreOf(transfer.name)}
          onPress={() => openDialog({ kind: 'transfer', transfer: transfer.id })}
        >
          …
        </Button>
        <Button weight="plain" aria-label={words.removeTransfer(transfer.name)} onPress={remove}>
          ✕
        </Button>
      </div>
      {tooLarge && <p className="row-note care small">{words.tooLarge(tooLarge)}</p>}
      <ArtworkAdvice transfer={transfer} />
    </section>
  );
}
