import { garmentPrice, newDesigns } from '../../src/costing/run';
import { edits, type OrderFields } from '../../src/editing';
import { type Book, garmentsByOrder, type Order, type OrderPricing } from '../../src/model';
import { fail, type Minor, minorDigits, ok, parsePrice, parseShare, type Result } from '../../src/units';
import { QuotesGiven } from '../panels/QuotesGiven';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { EntryCell } from '../parts/EntryCell';
import { Tick } from '../parts/Tick';
import { type PricedOrder, usePriced } from '../store/costs';
import { settingsOrFirst, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { CloseButton } from '../windows/CloseButton';
import { Window } from '../windows/Window';
import { useWords, wordsNow } from '../words';
import { money, number, percent, type Ways, whole } from '../words/format';
import { MarginChart } from './MarginChart';
import { PriceLines } from './PriceLines';
import { giveQuote } from './quoting';
import './pricing.css';

/** An order's price, what it earns, and what of it is this order's own. */
export function PriceDialog({ id }: { id: string }) {
  const { price: words } = useWords();
  const order = useShop(({ book }) => book.order[id]);
  const priced = usePriced(id);
  if (!order) return null;
  return (
    <Window title={words.title(order.name)} wide>
      {priced ? <Priced order={order} priced={priced} /> : <p>{words.nothing}</p>}
      <div className="actions">
        <Button
          weight="plain"
          onPress={() => openDialog({ kind: 'prices', back: { kind: 'price', order: id } })}
        >
          {words.rates}
        </Button>
        {priced && (
          <Button weight="plain" onPress={() => openDialog({ kind: 'compare-order', order: id })}>
            {wordsNow().costSheet.compare}
          </Button>
        )}
        <Button weight="plain" onPress={() => openDialog({ kind: 'grid', order: id })}>
          {wordsNow().orders.grid}
        </Button>
        {priced && <Button onPress={() => giveQuote(order, priced)}>{words.quote}</Button>}
        <CloseButton />
      </div>
    </Window>
  );
}

function Priced({ order, priced }: { order: Order; priced: PricedOrder }) {
  const { price: words } = useWords();
  const ways = useWays();
  const { price, alone } = priced;
  const share = (value: number | null) => (value === null ? null : percent(value, ways));
  return (
    <>
      <div className="price-head">
        <p>
          <strong data-testid="price-total">{money(price.total, ways)}</strong>{' '}
          {price.tax && <span className="quiet">{words.withTax}</span>}
        </p>
        <p>{words.earned(share(price.margin), share(price.markup), money(price.cost, ways))}</p>
        {price.problem && (
          <p className={price.problem === 'below-cost' ? 'error' : 'care'} role="status">
            {words.problems[price.problem]}
          </p>
        )}
        {alone && <p className="quiet small">{words.alone(alone.name)}</p>}
      </div>
      <div className="price-columns">
        <section aria-labelledby="price-lines">
          <h3 id="price-lines">{words.lines}</h3>
          <PriceLines price={price} />
          <p className="quiet small">{words.deposit(money(price.deposit, ways))}</p>
        </section>
        <div>
          <OwnFields order={order} />
          <QuotesGiven order={order.id} />
          <MarginChart price={price} />
        </div>
      </div>
    </>
  );
}

const typedShare = (share: number, { locale }: Ways): string => number(100 * share, locale, 0, 2);

/** Reads a percentage up to a largest one. */
const readShare =
  (most: number) =>
  (typed: string): Result<number, string> => {
    const read = parseShare(typed, most);
    return read.ok ? read : fail(wordsNow().shareProblems[read.problem]);
  };

/** Reads a margin, which stays below the whole price. */
const readMargin = (typed: string): Result<number, string> => {
  const read = parseShare(typed, 0.99);
  if (read.ok) return read;
  return fail(
    read.problem === 'too-much' ? wordsNow().prices.marginProblem : wordsNow().shareProblems[read.problem],
  );
};

/** What of the price is this order's own; each entry counts at once and can be undone. */
function OwnFields({ order }: { order: Order }) {
  const { price: words, orders } = useWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const shop = settingsOrFirst(book).pricing;
  const { aim } = order.pricing;
  const edit = (fields: Partial<OrderFields>) => act(edits.editOrder(order.id, fields));
  const set = (fields: Partial<OrderPricing>) => edit({ pricing: { ...order.pricing, ...fields } });
  return (
    <section aria-labelledby="price-own">
      <h3 id="price-own">{words.own}</h3>
      <div className="fields">
        <Choice
          label={words.aim}
          value={aim?.kind ?? 'shop'}
          options={(['shop', 'margin', 'markup'] as const).map((value) => ({
            value,
            label: words.aims[value],
          }))}
          onChange={(kind) =>
            set({ aim: kind === 'shop' ? null : { kind, share: Math.min(0.99, (aim ?? shop.aim).share) } })
          }
        />
        {aim && (
          <Labelled label={words.aimShare}>
            <EntryCell
              label={words.aimShare}
              inputMode="decimal"
              text={typedShare(aim.share, ways)}
              read={aim.kind === 'margin' ? readMargin : readShare(100)}
              onEntry={(share) => set({ aim: { ...aim, share } })}
            />
          </Labelled>
        )}
        <Labelled label={words.discountField}>
          <EntryCell
            label={words.discountField}
            inputMode="decimal"
            text={typedShare(order.pricing.discount, ways)}
            read={readShare(1)}
            onEntry={(discount) => set({ discount })}
          />
        </Labelled>
        <Labelled
          label={words.newDesigns}
          hint={words.newDesignsHint(whole(countedDesigns(book, order), ways))}
        >
          <EntryCell
            label={words.newDesigns}
            inputMode="numeric"
            text={order.pricing.newDesigns === null ? '' : String(order.pricing.newDesigns)}
            read={readCountOrNone}
            onEntry={(count) => set({ newDesigns: count })}
          />
        </Labelled>
      </div>
      <Tick label={orders.isRush} checked={order.rush} onChange={(rush) => edit({ rush })} />
      <Tick label={words.isSupplied} checked={order.supplied} onChange={(supplied) => edit({ supplied })} />
      {order.wants === 'garments' && !order.supplied && <GarmentPrices order={order} book={book} />}
    </section>
  );
}

const countedDesigns = (book: Book, order: Order): number =>
  newDesigns(book, { ...order, pricing: { ...order.pricing, newDesigns: null } });

/** A whole number, or nothing typed. */
function readCountOrNone(typed: string): Result<number | null, string> {
  if (typed.trim() === '') return ok(null);
  return /^\s*\d{1,4}\s*$/.test(typed) ? ok(Number(typed)) : fail(wordsNow().price.wholeProblem);
}

function Labelled({ label, hint, children }: { label: string; hint?: string; children: React.ReactNode }) {
  return (
    <div className="field">
      <span className="field-name" aria-hidden="true">
        {label}
      </span>
      {children}
      {hint && <p className="hint">{hint}</p>}
    </div>
  );
}

/** What one garment of each style and colour costs the shop; empty for what its style costs. */
function GarmentPrices({ order, book }: { order: Order; book: Book }) {
  const { price: words } = useWords();
  const ways = useWays();
  const { costs } = settingsOrFirst(book);
  const groups = new Map<
    string,
    { ids: string[]; price: Minor | null; usual: Minor | null; count: number }
  >();
  for (const garment of garmentsByOrder(book).get(order.id) ?? []) {
    const name = [garment.style, garment.colour].filter(Boolean).join(', ');
    const usual = garmentPrice({ ...garment, price: null }, costs);
    const group = groups.get(name) ?? { ids: [], price: garment.price, usual, count: 0 };
    group.ids.push(garment.id);
    group.count += garment.count;
    groups.set(name, group);
  }
  if (groups.size === 0) return null;
  const read = (typed: string): Result<Minor | null, string> => {
    if (typed.trim() === '') return ok(null);
    const price = parsePrice(typed, ways.currency);
    return price.ok ? price : fail(wordsNow().moneyProblems[price.problem]);
  };
  return (
    <>
      <h4>{words.garments}</h4>
      <div className="fields">
        {[...groups].map(([name, { ids, price, usual, count }]) => (
          <Labelled
            key={name}
            label={`${whole(count, ways)} × ${name}`}
            hint={words.garmentDefault(usual === null ? words.none : money(usual, ways))}
          >
            <EntryCell
              label={words.garmentPrice(name)}
              inputMode="decimal"
              text={price === null ? '' : number(price / 10 ** minorDigits(ways.currency), ways.locale, 0, 4)}
              read={read}
              onEntry={(own) => act(edits.priceGarments(ids, own))}
            />
          </Labelled>
        ))}
      </div>
    </>
  );
}
