import type { Price, PriceLine } from '../../src/pricing';
import { useWays } from '../store/selectors';
import { useWords, type Words } from '../words';
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
      return price.breakOff(line.from, percent(line.share, ways), line.name);
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

/** The lines of a price with their sum and tax; nothing in it tells what anything costs the shop. */
export function PriceLines({ price }: { price: Price }) {
  const words = useWords();
  const ways = useWays();
  const { columns, subtotal, tax, taxIncluded, taxName } = words.price;
  const taxed = price.tax;
  const taxLabel = taxed && ([taxed.name || taxName, percent(taxed.share, ways)] as const);
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
        {price.lines.map((line) => (
          <tr key={keyOf(line)} data-line={line.kind}>
            <th scope="row">{tell(line, words, ways)}</th>
            <td>{'count' in line ? whole(line.count, ways) : ''}</td>
            <td>{'each' in line ? money(line.each, ways) : ''}</td>
            <td data-amount={line.amount}>{money(line.amount, ways)}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        {taxed && taxLabel && taxed.kind === 'on-top' && (
          <>
            <tr>
              <th scope="row" colSpan={3}>
                {subtotal}
              </th>
              <td>{money(price.subtotal, ways)}</td>
            </tr>
            <tr>
              <th scope="row" colSpan={3}>
                {tax(...taxLabel)}
              </th>
              <td>{money(taxed.amount, ways)}</td>
            </tr>
          </>
        )}
        <tr className="price-total">
          <th scope="row" colSpan={3}>
            {words.quote.total}
          </th>
          <td>{money(price.total, ways)}</td>
        </tr>
        {taxed && taxLabel && taxed.kind === 'included' && (
          <tr>
            <th scope="row" colSpan={3}>
              {taxIncluded(...taxLabel)}
            </th>
            <td>{money(taxed.amount, ways)}</td>
          </tr>
        )}
      </tfoot>
    </table>
  );
}
