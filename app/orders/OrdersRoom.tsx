import { useWindowVirtualizer } from '@tanstack/react-virtual';
import { memo, useDeferredValue, useEffect, useMemo, useRef, useState } from 'react';
import { FileTrigger } from 'react-aria-components';
import { edits } from '../../src/editing';
import { countOf } from '../../src/units';
import { redoCommand, undoCommand } from '../commands';
import { CommandButton } from '../commands/CommandButton';
import { DemoButton } from '../panels/DemoButton';
import { useNextAct } from '../panels/useNextAct';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Empty } from '../parts/Empty';
import { Field } from '../parts/Field';
import { FileButton } from '../parts/FileButton';
import { tintOf } from '../parts/tints';
import { useLaidRun, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { goTo, openDialog, showNewOrder, useView } from '../store/view';
import { dropFiles } from './drop-files';
import { LateOrders } from './LateOrders';
import { NewTransferRow } from './NewTransferRow';
import { OrderHead } from './OrderHead';
import { openTable, openTableText } from './open-table';
import { type OrderLine, orderLines, type Sorting } from './order-lines';
import { TransferRow } from './TransferRow';
import { useFileDrop } from './useFileDrop';
import './orders.css';
import { useAllWords } from '../words';

/** The day's orders: pasted, opened or typed, each with its transfers. */
export function OrdersRoom() {
  const { orders: words, runs } = useAllWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const [search, setSearch] = useState('');
  const [sorting, setSorting] = useState<Sorting>('due');
  const [archived, setArchived] = useState(false);
  const first = useView((view) => view.newOrder);
  // The field keeps up with typing; thousands of orders follow when they can.
  const sought = useDeferredValue(search);
  const lines = useMemo(
    () => orderLines(book, { search: sought, sorting, archived, first }),
    [book, sought, sorting, archived, first],
  );
  const any = countOf(book.order) > 0;
  const next = useNextAct(useLaidRun());
  const toLay = next === 'lay-out' && Object.values(book.copy).some(({ state }) => state === 'waiting');
  usePastedTable();
  useEffect(() => {
    if (first === null) return;
    setSearch('');
    setArchived(false);
    scrollTo({ top: 0 });
  }, [first]);
  useEffect(() => () => showNewOrder(null), []);
  const addOrder = () => {
    const added = act(edits.addOrder({ name: words.newOrder, due: null }));
    if (added) showNewOrder(added.result);
  };
  const { dropping, target } = useFileDrop((files) => dropFiles(files, null));
  const paste = (
    <Button weight={toLay ? 'normal' : 'primary'} onPress={() => openDialog({ kind: 'paste', text: '' })}>
      {words.paste}
    </Button>
  );
  return (
    <section
      aria-label={words.title}
      className={dropping ? 'orders-page dropping' : 'orders-page'}
      {...target}
    >
      <div className="room-head">
        <div>
          <h1>{words.title}</h1>
          {any && (
            <p className="quiet">
              {words.summary(countOf(book.order), countOf(book.transfer), countOf(book.copy), ways)}
            </p>
          )}
        </div>
        <div className="actions">
          <CommandButton command={undoCommand} weight="plain" />
          <CommandButton command={redoCommand} weight="plain" />
          <FileTrigger
            acceptedFileTypes={[
              '.csv',
              '.tsv',
              '.txt',
              'text/csv',
              'text/tab-separated-values',
              'text/plain',
            ]}
            onSelect={(files) => files?.[0] && void openTable(files[0])}
          >
            <FileButton>{words.open}</FileButton>
          </FileTrigger>
          <Button writes onPress={addOrder}>
            {words.addOrder}
          </Button>
          {any && paste}
          {toLay && (
            <Button weight="primary" onPress={() => goTo('film')}>
              {runs.leadOn.draft}
            </Button>
          )}
        </div>
      </div>
      {any ? (
        <>
          <div className="order-tools">
            <Field label={words.search} value={search} onChange={setSearch} />
            <Choice
              label={words.sort}
              value={sorting}
              options={[
                { value: 'due', label: words.sortings.due },
                { value: 'name', label: words.sortings.name },
                { value: 'state', label: words.sortings.state },
              ]}
              onChange={(by) => {
                showNewOrder(null);
                setSorting(by);
              }}
            />
            <Choice
              label={words.show}
              value={archived ? 'archived' : 'open'}
              options={[
                { value: 'open', label: words.showOpen },
                { value: 'archived', label: words.showArchived },
              ]}
              onChange={(shown) => setArchived(shown === 'archived')}
            />
          </div>
          {lines.length === 0 && <p className="quiet">{words.noneFound}</p>}
          <LateOrders />
          <Lines lines={lines} first={first} />
        </>
      ) : (
        <Empty title={words.emptyTitle} isPart>
          <p>{words.empty}</p>
          <div className="actions">
            {paste}
            <DemoButton />
          </div>
        </Empty>
      )}
    </section>
  );
}

/** Only the lines in view are in the page, so that a thousand transfers stay quick. */
const Lines = memo(function Lines({ lines, first }: { lines: readonly OrderLine[]; first: string | null }) {
  const list = useRef<HTMLDivElement>(null);
  const virtual = useWindowVirtualizer({
    count: lines.length,
    estimateSize: () => 64,
    overscan: 12,
    scrollMargin: list.current?.offsetTop ?? 0,
    getItemKey: (index) => lines[index]?.key ?? index,
  });
  return (
    <div className="order-list" ref={list} style={{ height: virtual.getTotalSize() }}>
      {virtual.getVirtualItems().map(({ key, index, start }) => {
        const line = lines[index];
        if (!line) return null;
        return (
          <div
            key={key}
            ref={virtual.measureElement}
            data-index={index}
            className={`order-line ${line.kind}-line`}
            style={{
              '--tint': tintOf(line.order.tint),
              transform: `translateY(${start - virtual.options.scrollMargin}px)`,
            }}
          >
            {line.kind === 'head' && <OrderHead {...line} isNew={line.order.id === first} />}
            {line.kind === 'transfer' && <TransferRow {...line} />}
            {line.kind === 'add' && <NewTransferRow order={line.order} />}
          </div>
        );
      })}
    </div>
  );
});

/** A table pasted anywhere in the room, outside of a field, opens the window that reads it. */
function usePastedTable(): void {
  const open = useRef(false);
  open.current = useView((view) => view.dialog !== null);
  useEffect(() => {
    const stopped = new AbortController();
    const onPaste = (event: ClipboardEvent): void => {
      const inField = event.target instanceof HTMLElement && event.target.closest('input, textarea') !== null;
      const text = event.clipboardData?.getData('text/plain') ?? '';
      if (inField || open.current || text.trim() === '') return;
      event.preventDefault();
      openTableText(text);
    };
    addEventListener('paste', onPaste, { signal: stopped.signal });
    return () => stopped.abort();
  }, []);
}
