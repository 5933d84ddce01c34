import { garmentPrice, newDesigns } from '../../src/costing/run';
import { edits, type OrderFields } from '../../src/editing';
import { type Book, garmentsByOrder, type Order, type OrderPricing } from '../../src/model';
import type { Minor } from '../../src/units';
import { QuotesGiven } from '../panels/QuotesGiven';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { optional } from '../parts/fields/codec';
import { EntryCell } from '../parts/fields/EntryCell';
import { money } from '../parts/fields/money';
import { share, whole } from '../parts/fields/numbers';
import { Tick } from '../parts/Tick';
import { type PricedOrder, usePriced } from '../store/prices';
import { useReader } from '../store/reader';
import { settingsOrFirst, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { CloseButton } from '../windows/CloseButton';
import { Window } from '../windows/Window';
import { allWordsNow, useAllWords } from '../words';
import { money as moneyText, percent, whole as wholeText } from '../words/format';
import { MarginChart } from './MarginChart';
import { PriceLines } from './PriceLines';
import { aimShare } from './prices-form';
import { giveQuote } from './quoting';
import './pricing.css';

/** An order's price, what it earns, and what of it is this order's own. */
export function PriceDialog({ id }: { id: string }) {
  const { price: words } = useAllWords();
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
            {allWordsNow().costSheet.compare}
          </Button>
        )}
        <Button weight="plain" onPress={() => openDialog({ kind: 'grid', order: id })}>
          {allWordsNow().orders.grid}
        </Button>
        {priced && (
          <Button writes onPress={() => giveQuote(order, priced)}>
            {words.quote}
          </Button>
        )}
        <CloseButton />
      </div>
    </Window>
  );
}

function Priced({ order, priced }: { order: Order; priced: PricedOrder }) {
  const { price: words } = useAllWords();
  const ways = useWays();
  const { price, alone } = priced;
  const share = (value: number | null) => (value === null ? null : percent(value, ways));
  return (
    <>
      <div className="price-head">
        <p>
          <strong data-testid="price-total">{moneyText(price.total, ways)}</strong>{' '}
          {price.tax && <span className="quiet">{words.withTax}</span>}
        </p>
        <p>{words.earned(share(price.margin), share(price.markup), moneyText(price.cost, ways))}</p>
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
          <p className="quiet small">{words.deposit(moneyText(price.deposit, ways))}</p>
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

const newDesignCount = optional(whole(0, 9999, ({ price }) => price.wholeProblem));

/** What of the price is this order's own; each entry counts at once and can be undone. */
function OwnFields({ order }: { order: Order }) {
  const reader = useReader();
  const { price: words, orders } = reader.words;
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
          writes
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
              value={aim.share}
              codec={aimShare(aim.kind)}
              reader={reader}
              onEntry={(part) => set({ aim: { ...aim, share: part } })}
            />
          </Labelled>
        )}
        <Labelled label={words.discountField}>
          <EntryCell
            label={words.discountField}
            value={order.pricing.discount}
            codec={share()}
            reader={reader}
            onEntry={(discount) => set({ discount })}
          />
        </Labelled>
        <Labelled
          label={words.newDesigns}
          hint={words.newDesignsHint(wholeText(countedDesigns(book, order), reader))}
        >
          <EntryCell
            label={words.newDesigns}
            value={order.pricing.newDesigns}
            codec={newDesignCount}
            reader={reader}
            onEntry={(count) => set({ newDesigns: count })}
          />
        </Labelled>
      </div>
      <Tick writes label={orders.isRush} checked={order.rush} onChange={(rush) => edit({ rush })} />
      <Tick
        writes
        label={words.isSupplied}
        checked={order.supplied}
        onChange={(supplied) => edit({ supplied })}
      />
      {order.wants === 'garments' && !order.supplied && <GarmentPrices order={order} book={book} />}
    </section>
  );
}

const countedDesigns = (book: Book, order: Order): number =>
  newDesigns(book, { ...order, pricing: { ...order.pricing, newDesigns: null } });

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
  const reader = useReader();
  const { price: words } = reader.words;
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
  return (
    <>
      <h4>{words.garments}</h4>
      <div className="fields">
        {[...groups].map(([name, { ids, price, usual, count }]) => (
          <Labelled
            key={name}
            label={`${wholeText(count, reader)} × ${name}`}
            hint={words.garmentDefault(usual === null ? words.none : moneyText(usual, reader))}
          >
            <EntryCell
              label={words.garmentPrice(name)}
              value={price}
              codec={optional(money)}
              reader={reader}
              onEntry={(own) => act(edits.priceGarments(ids, own))}
            />
          </Labelled>
        ))}
      </div>
    </>
  );
}
