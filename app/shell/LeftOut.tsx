import { settingsFields } from '../../src/model';
import { unsummed } from '../../src/stock';
import type { FoundBook } from '../store/bring-back';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { byCollection, namesOf } from './by-collection';

/** Names what of a kept book cannot be read, and so would not come back with it. */
export function LeftOut({ found: { book, setAside, fellBack, missing } }: { found: FoundBook }) {
  const { bringBack: words, damaged } = useAllWords();
  const ways = useWays();
  const lines = byCollection(setAside).map(({ collection, own }) => {
    const count = collection ? damaged.records[collection] : damaged.other;
    return words.records(count(own.length, ways), namesOf(own), ways);
  });
  if (fellBack.length === settingsFields.length) lines.push(words.allSettings);
  else if (fellBack.length > 0)
    lines.push(
      words.settings(
        fellBack.map((field) => damaged.settings[field]),
        ways,
      ),
    );
  if (missing.length > 0) lines.push(words.images(missing.length, missing, ways));
  const films = unsummed(book).map(({ film }) => film.name);
  return (
    <>
      {films.length > 0 && <p className="care">{words.unsummed(films, ways)}</p>}
      {lines.length > 0 && (
        <>
          <p className="care">{words.lacks}</p>
          <p>{words.leftOut}</p>
          <ul>
            {lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}
