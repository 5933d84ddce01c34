import type { PriceLine, Quote } from '../../src/model';
import type { Price } from '../../src/pricing';
import type { Minor } from '../../src/units';
import { useWays } from '../store/selectors';
import { useAllWords, type Words } from '../words';
import { money, percent, type Ways, whole } from '../words/format';

/** A line as the customer may read it. */
function tell(line: PriceLine, words: Words, ways: Ways): string {
  const { price } = words;
  switch (line.kind) {
    case 'print':
      return words.quote.print1(line.name);
    case 'garments':
      return line.name;
    case 'artwork-fee':
      return price.fee;
    case 'supplied':
      return price.supplied;
    case 'break':
      return price.breakOff(whole(line.from, ways), percent(line.share, ways), line.name);
    case 'discount':
      return price.discount(percent(line.share, ways));
    case 'rush':
      return price.rush(percent(line.share, ways));
    case 'minimum':
      return price.minimum;
  }
}

const keyOf = (line: PriceLine): string =>
  `${line.kind} ${'id' in line ? line.id : 'name' in line ? line.name : ''}`;

/** A price as a customer reads it. */
type Told = NonNullable<Quote['content']> & Pick<Quote, 'total'>;

/** The lines of a price with their sum and tax; nothing in it tells what anything costs the shop. */
export function PriceLines({ price }: { price: Price }) {
  return <PriceTable lines={price.lines} sums={price} words={useAllWords()} ways={useWays()} />;
}

export function PriceTable({
  lines,
  sums,
  words,
  ways,
}: {
  lines: readonly PriceLine[];
  /** Left out where they come on a later page. */
  sums: Omit<Told, 'lines'> | null;
  words: Words;
  ways: Ways;
}) {
  const { columns } = words.price;
  return (
    <table className="price-lines">
      <thead>
        <tr>
          <th scope="col">{columns.what}</th>
          <th scope="col">{columns.count}</th>
          <th scope="col">{columns.each}</th>
          <th scope="col">{columns.amount}</th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <tr key={keyOf(line)} data-line={line.kind}>
            <th scope="row">{tell(line, words, ways)}</th>
            <td>{'count' in line ? whole(line.count, ways) : ''}</td>
            <td>{'each' in line ? money(line.each, ways) : ''}</td>
            <td data-amount={line.amount}>{money(line.amount, ways)}</td>
          </tr>
        ))}
      </tbody>
      {sums && <Sums sums={sums} words={words} ways={ways} />}
    </table>
  );
}

function Sums({ sums, words, ways }: { sums: Omit<Told, 'lines'>; words: Words; ways: Ways }) {
  const { subtotal, tax, taxIncluded, taxName } = words.price;
  const taxed = sums.tax;
  const taxLabel = taxed && ([taxed.name || taxName, percent(taxed.share, ways)] as const);
  const row = (label: string, amount: Minor, className?: string) => (
    <tr className={className}>
      <th scope="row">{label}</th>
      <td colSpan={3}>{money(amount, ways)}</td>
    </tr>
  );
  return (
    // No `tfoot`, which browsers print again on every page.
    <tbody className="price-sums">
      {taxLabel && taxed?.kind === 'on-top' && (
        <>
          {row(subtotal, sums.subtotal)}
          {row(tax(...taxLabel), taxed.amount)}
        </>
      )}
      {row(words.quote.total, sums.total, 'price-total')}
      {taxLabel && taxed?.kind === 'included' && row(taxIncluded(...taxLabel), taxed.amount)}
    </tbody>
  );
}
