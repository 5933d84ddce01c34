import { edits, waitingFor } from '../../src/editing';
import { asEntered } from '../../src/model';
import { Button } from '../parts/Button';
import { useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { notify } from '../store/view';
import { useAllWords } from '../words';
import { area, dayAndTime, whole } from '../words/format';
import './shelf.css';

/** Cured transfers in stock, and the orders that could use them. */
export function Shelf({ empty = '' }: { empty?: string }) {
  const { press: words } = useAllWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const items = asEntered(Object.values(book.shelf)).filter(({ count }) => count > 0);
  if (items.length === 0) return empty === '' ? null : <p className="quiet">{empty}</p>;
  const draw = (id: string) => {
    notify('plain', words.drawn(act(edits.drawFromShelf(id))?.result ?? 0, ways));
  };
  return (
    <ul className="shelf-list">
      {items.map(({ id, code, name, width, height, count, cured }) => {
        const wanted = Math.min(count, waitingFor(book, id).length);
        return (
          <li key={id}>
            <b>{whole(count, ways)}</b> {words.shelfItem(code, name, area(width, height, ways))}{' '}
            <span className="quiet small">{words.shelfCured(dayAndTime(cured, ways))}</span>
            {wanted > 0 && (
              <Button writes onPress={() => draw(id)}>
                {words.draw(wanted, ways)}
              </Button>
            )}
          </li>
        );
      })}
    </ul>
  );
}
