import { useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { useAllWords } from '../words';
import { Band } from './Band';
import { byCollection, namesOf } from './by-collection';

/** So many are named of each collection. */
const NAMED = 5;

/** Names what of the stored book could not be read, and says which settings had to be those of a new shop. */
export function Damaged() {
  const { damaged: words } = useAllWords();
  const ways = useWays();
  const setAside = useShop((shop) => shop.setAside);
  const fellBack = useShop((shop) => shop.fellBack);
  const groups = byCollection(setAside).map(({ collection, own }) => {
    const count = (collection ? words.records[collection] : words.other)(own.length, ways);
    return words.named(count, namesOf(own).slice(0, NAMED), ways);
  });
  return (
    <>
      {groups.length > 0 && (
        <Band tone="care">
          <p>{words.said}</p>
          <details>
            <summary>{words.which}</summary>
            <ul>
              {groups.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </details>
        </Band>
      )}
      {fellBack.length > 0 && (
        <Band tone="care">
          <p>
            {words.fellBack(
              fellBack.map((field) => words.settings[field]),
              ways,
            )}
          </p>
        </Band>
      )}
    </>
  );
}
