import { edits, inPrint } from '../../src/editing';
import { tooLargeFor } from '../../src/layout';
import { filmsAhead, garmentsByOrder, linesFor, type Transfer, tellsFabric } from '../../src/model';
import { TURNINGS } from '../../src/units';
import { FabricCell } from '../panels/FabricChoice';
import { GradeButton } from '../panels/GradeButton';
import { Button } from '../parts/Button';
import { ChoiceCell } from '../parts/fields/ChoiceCell';
import { EntryCell } from '../parts/fields/EntryCell';
import { useReader } from '../store/reader';
import { act, useShop } from '../store/shop';
import { notify, openDialog } from '../store/view';
import { useAllWords } from '../words';
import { ArtworkAdvice } from './ArtworkAdvice';
import { ArtworkCell } from './ArtworkCell';
import { giveArtwork } from './artwork';
import { dropFiles } from './drop-files';
import { copiesFrom, name, type Sized, sizeAsTyped } from './entries';
import { copyCounts, type OrderLine } from './order-lines';
import { useFileDrop } from './useFileDrop';

/** One transfer: artwork, name, size, copies. An image dropped anywhere on the row becomes its artwork; of several, each is matched. */
export function TransferRow({ transfer }: Extract<OrderLine, { kind: 'transfer' }>) {
  const reader = useReader();
  const { orders: words } = reader.words;
  const book = useShop((shop) => shop.book);
  const { ordered, spare, placed, fixed } = copyCounts(book, transfer.id);
  const [tooLarge, ...elsewhere] = filmsAhead(book).map((film) => tooLargeFor(film, transfer));
  const hasNoPlace = placed < ordered + spare && elsewhere.every((reason) => reason !== null);
  const { dropping, target } = useFileDrop((files) => {
    const [file] = files;
    if (file && files.length === 1) void giveArtwork(transfer.id, file);
    else dropFiles(files, transfer.order);
  });
  const of = (label: string) => `${label}: ${transfer.name}`;
  const sizeOf = (side: 'width' | 'height'): Sized => ({
    length: transfer[side],
    typed: transfer.typed[side],
  });
  const enterSize =
    (side: 'width' | 'height') =>
    ({ length, typed }: Sized) =>
      act(
        edits.editTransfer(transfer.id, {
          [side]: length,
          typed: { ...transfer.typed, [side]: typed },
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
        value={transfer.name}
        codec={name}
        reader={reader}
        onEntry={(called) => act(edits.editTransfer(transfer.id, { name: called }))}
      />
      <EntryCell
        label={of(words.width)}
        value={sizeOf('width')}
        codec={sizeAsTyped}
        reader={reader}
        onEntry={enterSize('width')}
      />
      <EntryCell
        label={of(words.height)}
        value={sizeOf('height')}
        codec={sizeAsTyped}
        reader={reader}
        onEntry={enterSize('height')}
      />
      <EntryCell
        label={of(words.count)}
        value={ordered}
        codec={copiesFrom(1, fixed)}
        reader={reader}
        onEntry={(wanted) => act(edits.setCount(transfer.id, wanted, 'ordered'))}
      />
      <ChoiceCell
        label={of(words.mayTurn)}
        value={transfer.turn}
        options={TURNINGS.map((value) => ({ value, label: words.turnings[value] }))}
        onChange={(turn) => act(edits.editTransfer(transfer.id, { turn }))}
      />
      <LineFabric transfer={transfer} />
      <span className={placed === ordered + spare ? 'quiet small placed' : 'small placed'}>
        {words.all(placed, ordered + spare, reader)}
      </span>
      <div className="row-acts">
        <Button
          weight="plain"
          aria-label={words.moreOf(transfer.name)}
          onPress={() => openDialog({ kind: 'transfer', transfer: transfer.id })}
        >
          …
        </Button>
        <Button writes weight="plain" aria-label={words.removeTransfer(transfer.name)} onPress={remove}>
          ✕
        </Button>
      </div>
      {tooLarge && hasNoPlace && <p className="row-note care small">{words.tooLarge(tooLarge)}</p>}
      <ArtworkAdvice transfer={transfer} />
    </section>
  );
}

/** What a transfer goes on: told here where it was listed by hand, else by the lines of garments that call for it. */
function LineFabric({ transfer }: { transfer: Transfer }) {
  const { press } = useAllWords();
  const book = useShop((shop) => shop.book);
  if (tellsFabric(transfer)) {
    return (
      <FabricCell
        label={`${press.fabric}: ${transfer.name}`}
        fabric={transfer.fabric}
        onTell={(fabric) => act(edits.tellFabric([transfer.id], fabric))}
      />
    );
  }
  const lines = linesFor(book, transfer, garmentsByOrder(book).get(transfer.order) ?? []) ?? [];
  const told = [
    ...new Set(lines.map(({ fabric }) => (fabric === null ? press.untold : press.fabrics[fabric]))),
  ];
  return <span className="small quiet line-fabric">{told.join(', ')}</span>;
}
