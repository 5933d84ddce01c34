import { edits } from '../../src/editing';
import type { Book, LedgerEntry } from '../../src/model';
import { amountOf, counterProblem, countersOf, isUndone, itemOf } from '../../src/stock';
import { Button } from '../parts/Button';
import type { Column } from '../parts/LongTable';
import { useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { notify } from '../store/view';
import { allWordsNow, useAllWords } from '../words';
import { dayAndTime } from '../words/format';

/** Undoes an entry by another, or says why it cannot be. */
function undoEntry(entry: LedgerEntry, told: (amount: number) => string): void {
  const { stock: words } = allWordsNow();
  const { book } = useShop.getState();
  const present = amountOf(book, entry.item) ?? 0;
  const problem = counterProblem(book, entry);
  if (problem !== null) {
    notify('error', words.problems[problem](entry.name, told(present)));
    return;
  }
  act(edits.counterEntry(entry.id));
  notify('plain', words.undoneNote(entry.name, told(present - entry.amount)));
}

const isByRun = ({ kind }: LedgerEntry) => kind === 'printed' || kind === 'used';

/** What is told of an entry; of a single item's entries its name goes without saying. */
export function useEntryColumns(book: Book, ofOne: boolean): readonly Column<LedgerEntry>[] {
  const { stock: words } = useAllWords();
  const ways = useWays();
  const counters = countersOf(book.entry);
  const item: Column<LedgerEntry> = {
    key: 'item',
    label: words.item,
    cell: ({ name, item: id }) => (
      <>
        {name}
        {!itemOf(book, id) && <span className="quiet small"> {words.goneItem}</span>}
      </>
    ),
  };
  return [
    {
      key: 'when',
      label: words.when,
      cell: ({ at }) => <span className="small">{dayAndTime(at, ways)}</span>,
    },
    ...(ofOne ? [] : [item]),
    {
      key: 'what',
      label: words.what,
      cell: (entry) => (
        <>
          {words.kinds[entry.kind]}
          {isUndone(counters, entry) && <span className="quiet small"> {words.undone}</span>}
        </>
      ),
    },
    {
      key: 'change',
      label: words.changed,
      figure: true,
      cell: ({ amount, unit }) => words.change(amount, unit, ways),
    },
    {
      key: 'run',
      label: words.run,
      cell: ({ run }) => (run === null ? '' : (book.run[run]?.name ?? book.closing[run]?.name ?? '')),
    },
    { key: 'note', label: words.note, cell: ({ note }) => note },
    {
      key: 'undo',
      label: '',
      cell: (entry) =>
        counters.has(entry.id) || isByRun(entry) ? (
          ''
        ) : (
          <Button
            writes
            weight="plain"
            aria-label={words.undoEntry(words.kinds[entry.kind], entry.name)}
            onPress={() => undoEntry(entry, (amount) => words.amount(amount, entry.unit, ways))}
          >
            {words.undo}
          </Button>
        ),
    },
  ];
}
