import { useMemo } from 'react';
import { edits } from '../../src/editing';
import type { Supply } from '../../src/model';
import { blankStock, isSameBlank, putAway, type Stocked, stocked, suppliesOf } from '../../src/stock';
import { Shelf } from '../panels/Shelf';
import { Button } from '../parts/Button';
import { useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { today } from '../store/today';
import { openDialog } from '../store/view';
import { useAllWords } from '../words';
import { whole } from '../words/format';
import { Ledger } from './Ledger';
import { StockTable } from './StockTable';
import './stock.css';

/** What the shop has: film, offcuts, ink, powder, garments and the shelf, and the ledger of all that came and went. */
export function StockRoom() {
  const { stock: words } = useAllWords();
  const book = useShop((shop) => shop.book);
  const all = useMemo(() => stocked(book, today()), [book]);
  const films = all.filter(({ item }) => item.kind === 'roll' || item.kind === 'sheets');
  const supplies = all.filter(({ item }) => ['white', 'colour', 'powder'].includes(item.kind));
  return (
    <>
      <div className="room-head">
        <h1>{words.title}</h1>
        <div className="actions">
          <Button weight="primary" onPress={() => openDialog({ kind: 'stock-add', garment: null })}>
            {words.add}
          </Button>
        </div>
      </div>
      <Notes all={all} />
      <StockTable id="stock-film" title={words.film} rows={films} />
      <StockTable id="stock-supplies" title={words.supplies} rows={supplies} empty={words.noSupplies} />
      <Garments all={all} />
      <section className="stock-part" aria-labelledby="stock-shelf">
        <h2 id="stock-shelf">{words.shelf}</h2>
        <Shelf empty={words.shelfEmpty} />
      </section>
      <PutAway />
      <Ledger />
    </>
  );
}

/** What wants ordering and what wants a look, in a line each. */
function Notes({ all }: { all: readonly Stocked[] }) {
  const { stock: words } = useAllWords();
  const named = (some: readonly Stocked[]) => some.map(({ item }) => item.name).join(', ');
  const low = all.filter(({ warnings }) => warnings.includes('below-reorder'));
  const other = all.filter(({ warnings }) => warnings.some((warning) => warning !== 'below-reorder'));
  return (
    <div className="stock-notes" role="status">
      {low.length > 0 && <p className="care">{words.toOrder(named(low))}</p>}
      {other.length > 0 && <p className="care">{words.toLookAt(named(other))}</p>}
    </div>
  );
}

/** Garments that are kept, against what open orders want of them, and those they want that nobody keeps. */
function Garments({ all }: { all: readonly Stocked[] }) {
  const { stock: words } = useAllWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const lines = useMemo(() => blankStock(book), [book]);
  const kept = all.filter(({ item }) => item.kind === 'blank');
  const wanted = lines.filter(({ blank }) => blank === null);
  const reservedOf = (item: Supply) =>
    item.kind === 'blank'
      ? (lines.find(({ blank }) => blank !== null && isSameBlank(blank, item))?.reserved ?? 0)
      : 0;
  const nothing = suppliesOf(book, 'blank').length === 0 && wanted.length === 0;
  return (
    <section className="stock-part" aria-labelledby="stock-garments">
      <StockTable
        id="stock-garments"
        title={words.garments}
        rows={kept}
        empty={nothing ? words.noGarments : ''}
        reservedOf={reservedOf}
      />
      {wanted.length > 0 && (
        <ul className="wanted">
          {wanted.map(({ style, colour, size, reserved }) => (
            <li key={`${style} ${colour} ${size}`}>
              <span>
                <b>{[style, colour, size].filter((part) => part !== '').join(', ')}</b>{' '}
                <span className="care">{words.short(reserved, ways)}</span>{' '}
                <span className="quiet small">
                  {words.reserved}: {whole(reserved, ways)} · {words.notKept}
                </span>
              </span>
              <Button onPress={() => openDialog({ kind: 'stock-add', garment: { style, colour, size } })}>
                {words.keepIt}
              </Button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** What was put away, and may be taken out again. */
function PutAway() {
  const { stock: words } = useAllWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const items = useMemo(() => putAway(book), [book]);
  if (items.length === 0) return null;
  return (
    <details className="more">
      <summary>{words.putAwayItems(items.length, ways)}</summary>
      <ul className="wanted">
        {items.map(({ id, name }) => (
          <li key={id}>
            <span>{name}</span>
            <Button
              writes
              aria-label={words.takeOutItem(name)}
              onPress={() => act(edits.archiveItem(id, false))}
            >
              {words.takeOut}
            </Button>
          </li>
        ))}
      </ul>
    </details>
  );
}
