import type { Supply } from '../../src/model';
import { type Stocked, unitOf } from '../../src/stock';
import { Button } from '../parts/Button';
import { type Column, LongTable } from '../parts/LongTable';
import { useWays } from '../store/selectors';
import { openDialog } from '../store/view';
import { useAllWords } from '../words';
import { dueDay, whole } from '../words/format';

/** Items of a sort, how much there is of each, and what is to be said of it. */
export function StockTable({
  id,
  title,
  rows,
  empty = '',
  reservedOf,
}: {
  id: string;
  title: string;
  rows: readonly Stocked[];
  empty?: string;
  /** How many of a garment open orders want. */
  reservedOf?: (item: Supply) => number;
}) {
  const { stock: words } = useAllWords();
  const ways = useWays();
  const reserved = ({ item }: Stocked) =>
    item.kind === 'roll' || item.kind === 'sheets' ? 0 : (reservedOf?.(item) ?? 0);
  const columns: readonly Column<Stocked>[] = [
    {
      key: 'item',
      label: words.item,
      cell: ({ item, box }) => (
        <>
          <Button
            weight="plain"
            aria-label={words.openItem(item.name)}
            onPress={() => openDialog({ kind: 'stock-item', item: item.id })}
          >
            {item.name}
          </Button>
          {box?.kind === 'film' && box.cutFrom && (
            <span className="quiet small"> {words.offcutOf(box.cutFrom.name)}</span>
          )}
        </>
      ),
    },
    {
      key: 'present',
      label: words.present,
      figure: true,
      cell: ({ item, amount }) => words.amount(amount, unitOf(item), ways),
    },
    // Kept free where nothing is reserved, so that the columns of all tables stand below one another.
    {
      key: 'reserved',
      label: reservedOf ? words.reserved : '',
      figure: true,
      cell: (row) => {
        if (!reservedOf) return '';
        const wanted = reserved(row);
        const short = wanted - Math.max(0, row.amount);
        return (
          <>
            {whole(wanted, ways)}
            {short > 0 && <span className="care"> {words.short(short, ways)}</span>}
          </>
        );
      },
    },
    {
      key: 'reorder',
      label: words.reorderBelow,
      figure: true,
      cell: ({ item, box }) =>
        box === null || box.reorder === null ? '' : words.amount(box.reorder, unitOf(item), ways),
    },
    {
      key: 'box',
      label: words.box,
      cell: ({ box }) => {
        const parts = [
          box?.lot ? words.lot(box.lot) : '',
          box?.bestBefore ? words.bestBefore(dueDay(box.bestBefore, ways)) : '',
          box?.opened ? words.opened(dueDay(box.opened, ways)) : '',
        ].filter((part) => part !== '');
        return parts.length === 0 ? '' : <span className="small">{parts.join(' · ')}</span>;
      },
    },
    {
      key: 'marks',
      label: '',
      cell: ({ box, warnings }) =>
        warnings.map((warning) => (
          <span key={warning} className="mark">
            {words.warnings[warning]}
            {warning === 'below-reorder' && box?.order ? `: ${box.order}` : ''}
          </span>
        )),
    },
  ];
  return (
    <section className="stock-part" aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      {rows.length === 0 ? (
        empty !== '' && <p className="quiet">{empty}</p>
      ) : (
        <LongTable labelledBy={id} columns={columns} rows={rows} keyOf={({ item }) => item.id} />
      )}
    </section>
  );
}
