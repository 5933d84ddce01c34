import { useState } from 'react';
import {
  type CostShare,
  type CostSheet,
  copyCosts,
  type OrderCost,
  type TransferCost,
} from '../../src/costing';
import type { RunCosts } from '../../src/costing/run';
import { edits } from '../../src/editing';
import { type LaidRun, layRun } from '../../src/layout';
import type { Book } from '../../src/model';
import { asMinor } from '../../src/units';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { OrderCode } from '../parts/OrderCode';
import { useRunCosts } from '../store/costs';
import { settingsOrFirst, useOrdersOf, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { CloseButton } from '../windows/CloseButton';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { money, percent } from '../words/format';
import { CostNotes } from './CostNotes';
import { tellLine, tellShare } from './formula';
import './costs.css';

/** Whose costs are looked at: the run's, or those of a part of it. */
interface Path {
  readonly order?: string;
  readonly transfer?: string;
  readonly copy?: number;
}

/** What a run costs: every figure opens to its formula, and every part to what it bears of it. */
export function CostSheetDialog({ id }: { id: string }) {
  const { costSheet: words } = useAllWords();
  const laid = useShop(({ book }) => {
    const run = book.run[id];
    return run ? layRun(book, run) : null;
  });
  if (!laid) return null;
  return (
    <Window title={words.title(laid.name)} wide>
      {laid.copies.length === 0 ? <p>{words.nothing}</p> : <Sheet run={laid} />}
      <div className="actions">
        <Button
          weight="plain"
          onPress={() => openDialog({ kind: 'costs', back: { kind: 'cost-sheet', run: id } })}
        >
          {words.rates}
        </Button>
        <Button weight="plain" onPress={() => openDialog({ kind: 'compare', run: id })}>
          {words.compare}
        </Button>
        <Button weight="plain" onPress={() => openDialog({ kind: 'make-or-buy', run: id })}>
          {words.makeOrBuy}
        </Button>
        <CloseButton />
      </div>
    </Window>
  );
}

function Sheet({ run }: { run: LaidRun }) {
  const { costSheet: words } = useAllWords();
  const ways = useWays();
  const costs = useRunCosts(run);
  const [path, setPath] = useState<Path>({});
  const { sheet } = costs;
  const { order, transfer, copy } = partAt(sheet, path);
  const share = copy ?? transfer ?? order ?? null;
  const copies = transfer && order ? (copy ? 1 : transfer.count) : copiesOf(order ?? null, sheet);
  const amount = share?.amount ?? sheet.amount;
  return (
    <>
      <Trail run={run} path={path} onPath={setPath} />
      <p className="cost-head">
        <strong data-testid="cost-total">{money(amount, ways)}</strong>{' '}
        {copies > 1 && words.each(copies, money(asMinor(amount / copies), ways), ways)}
      </p>
      <div className="cost-columns">
        <section aria-labelledby="cost-lines">
          <h3 id="cost-lines">{words.lines}</h3>
          <Lines sheet={sheet} share={share} />
        </section>
        {!copy && (
          <Parts run={run} sheet={sheet} order={order ?? null} transfer={transfer ?? null} onPath={setPath} />
        )}
      </div>
      <FilmBy costs={costs} />
      <CostNotes costs={costs} />
    </>
  );
}

function partAt(
  sheet: CostSheet,
  path: Path,
): { order?: OrderCost; transfer?: TransferCost; copy?: CostShare } {
  const order = sheet.orders.find(({ id }) => id === path.order);
  const transfer = order?.transfers.find(({ id }) => id === path.transfer);
  const copy = transfer && path.copy !== undefined ? copyCosts(transfer)[path.copy] : undefined;
  return { ...(order ? { order } : {}), ...(transfer ? { transfer } : {}), ...(copy ? { copy } : {}) };
}

const copiesOf = (order: OrderCost | null, sheet: CostSheet): number =>
  (order ? [order] : sheet.orders).reduce(
    (sum, { transfers }) => sum + transfers.reduce((own, { count }) => own + count, 0),
    0,
  );

/** Names and numbers of what lies on the run. */
const namesIn = (run: LaidRun, orders: Book['order']) => ({
  order: (id: string) => orders[id],
  transfer: (id: string) => run.copies.find((copy) => copy.transfer.id === id)?.transfer.name ?? '',
  numbers: (transfer: string) =>
    run.copies
      .filter((copy) => copy.transfer.id === transfer)
      .map(({ number }) => number)
      .sort((a, b) => a - b),
});

/** From the run down to what is looked at; each step goes back there. */
function Trail({ run, path, onPath }: { run: LaidRun; path: Path; onPath: (path: Path) => void }) {
  const { costSheet: words } = useAllWords();
  const names = namesIn(run, useOrdersOf(run));
  const { order: orderId, transfer, copy } = path;
  const order = orderId === undefined ? undefined : names.order(orderId);
  const steps: { label: string; path: Path }[] = [{ label: run.name, path: {} }];
  if (order && orderId !== undefined) steps.push({ label: order.name, path: { order: orderId } });
  if (order && transfer !== undefined)
    steps.push({ label: names.transfer(transfer), path: { order: order.id, transfer } });
  if (order && transfer !== undefined && copy !== undefined) {
    steps.push({ label: words.copy(order.code, names.numbers(transfer)[copy] ?? 0), path });
  }
  if (steps.length === 1) return null;
  return (
    <nav aria-label={words.path} className="cost-trail">
      {steps.map(({ label, path: to }, at) =>
        at === steps.length - 1 ? (
          <span key={label} aria-current="step">
            {label}
          </span>
        ) : (
          <Button key={label} weight="plain" onPress={() => onPath(to)}>
            {label}
          </Button>
        ),
      )}
    </nav>
  );
}

/** Each line with its amount; it opens to its formula. */
function Lines({ sheet, share }: { sheet: CostSheet; share: CostShare | null }) {
  const { costSheet: words } = useAllWords();
  const ways = useWays();
  const total = share?.amount ?? sheet.amount;
  return (
    <ul className="cost-lines">
      {sheet.lines.map((line, at) => {
        const amount = asMinor(share ? (share.lines[at] ?? 0) : line.amount);
        if (share && amount === 0 && (share.exact[at] ?? 0) === 0 && !line.gap) return null;
        const part = total > 0 ? amount / total : 0;
        return (
          <li key={line.kind}>
            <details data-kind={line.kind}>
              <summary>
                <span>{words.kinds[line.kind]}</span>
                <span className="cost-bar" aria-hidden="true">
                  <span style={{ width: `${100 * part}%` }} />
                </span>
                <span className="quiet small">{line.gap ? '' : percent(part, ways)}</span>
                <b data-amount={amount}>{line.gap ? '—' : money(amount, ways)}</b>
              </summary>
              {(share ? tellShare(sheet, share, at, words, ways) : tellLine(line, words, ways)).map(
                (told) => (
                  <p key={told} className="small">
                    {told}
                  </p>
                ),
              )}
            </details>
          </li>
        );
      })}
    </ul>
  );
}

/** What the amount is parted into: orders, transfers, copies. */
function Parts({
  run,
  sheet,
  order,
  transfer,
  onPath,
}: {
  run: LaidRun;
  sheet: CostSheet;
  order: OrderCost | null;
  transfer: TransferCost | null;
  onPath: (path: Path) => void;
}) {
  const { costSheet: words } = useAllWords();
  const ways = useWays();
  const names = namesIn(run, useOrdersOf(run));
  const level = transfer ? 'copies' : order ? 'transfers' : 'orders';
  const row = (key: string, amount: number, name: string, path: Path, code: React.ReactNode) => (
    <li key={key}>
      <button
        type="button"
        className="row-button cost-part"
        aria-label={`${words.open(name)}: ${money(asMinor(amount), ways)}`}
        onClick={() => onPath(path)}
      >
        {code}
        <span>{name}</span>
        <b data-amount={amount}>{money(asMinor(amount), ways)}</b>
      </button>
    </li>
  );
  return (
    <section aria-labelledby="cost-parts">
      <h3 id="cost-parts">{words.parts[level]}</h3>
      <ul className="cost-parts">
        {transfer && order
          ? copyCosts(transfer).map(({ amount }, at) => {
              const number = names.numbers(transfer.id)[at] ?? at;
              const name = words.copy(names.order(order.id)?.code ?? '', number);
              return row(name, amount, name, { order: order.id, transfer: transfer.id, copy: at }, null);
            })
          : order
            ? order.transfers.map(({ id, amount }) =>
                row(id, amount, names.transfer(id), { order: order.id, transfer: id }, null),
              )
            : [...sheet.orders]
                .sort((a, b) => b.amount - a.amount)
                .map(({ id, amount }) => {
                  const own = names.order(id);
                  return row(
                    id,
                    amount,
                    own?.name ?? '',
                    { order: id },
                    own && <OrderCode code={own.code} tint={own.tint} />,
                  );
                })}
      </ul>
    </section>
  );
}

/** The rule that film is shared by, which a locked run keeps. */
function FilmBy({ costs: { kept, costs } }: { costs: RunCosts }) {
  const { costSheet: words } = useAllWords();
  const shop = useShop(({ book }) => settingsOrFirst(book));
  if (kept) return <p className="quiet small">{`${words.filmBy} ${words.filmBys[costs.filmBy]}.`}</p>;
  return (
    <div className="cost-film-by">
      <Choice
        writes
        label={words.filmBy}
        value={costs.filmBy}
        options={(['footprint', 'ink'] as const).map((value) => ({ value, label: words.filmBys[value] }))}
        onChange={(filmBy) => act(edits.editSettings({ costs: { ...shop.costs, filmBy } }))}
      />
    </div>
  );
}
