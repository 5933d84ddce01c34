import { collectionNames, type SetAside } from '../../src/model';
import type { FoundBook } from '../store/bring-back';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';

/** So many settings are all of them. */
const ALL = 15;

const namesOf = (records: readonly SetAside[]): string[] => records.flatMap(({ name }) => name ?? []);

/** Names what of a kept book cannot be read, and so would not come back with it. */
export function LeftOut({ found: { setAside, fellBack, missing } }: { found: FoundBook }) {
  const { bringBack: words, damaged } = useAllWords();
  const ways = useWays();
  const lines = [...collectionNames, null].flatMap((collection) => {
    const own = setAside.filter((record) => record.collection === collection);
    const count = collection ? damaged.records[collection] : damaged.other;
    return own.length > 0 ? [words.records(count(own.length, ways), namesOf(own), ways)] : [];
  });
  if (fellBack.length > ALL) lines.push(words.allSettings);
  else if (fellBack.length > 0)
    lines.push(
      words.settings(
        fellBack.map((field) => damaged.settings[field]),
        ways,
      ),
    );
  if (missing.length > 0) lines.push(words.images(missing.length, missing, ways));
  return (
    <>
      <p className="care">{words.lacks}</p>
      <p>{words.leftOut}</p>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
}
