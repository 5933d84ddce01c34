import { useState } from 'react';
import { edits } from '../../src/editing';
import { type Column, columnNames, type Heading, headingOf } from '../../src/intake';
import { Choice } from '../parts/Choice';
import { useWays } from '../store/selectors';
import { act } from '../store/shop';
import { useAllWords } from '../words';

/** What each heading of a table means, open where one of them is not used; what is said otherwise is remembered. */
export function Mapping({ headings }: { headings: readonly Heading[] }) {
  const { table: words } = useAllWords();
  const ways = useWays();
  const used = headings.filter(({ column }) => column !== null).length;
  const [open] = useState(used < headings.length);
  return (
    <details className="mapping-box" open={open}>
      <summary>{words.mapTitle(used, headings.length - used, ways)}</summary>
      <fieldset className="mapping" aria-label={words.mapTitle(used, headings.length - used, ways)}>
        {headings.map(({ text, column }) => (
          <Choice<Column | 'none'>
            writes
            key={text}
            label={words.mapTo(text)}
            value={column ?? 'none'}
            options={[
              { value: 'none', label: words.notUsed },
              ...columnNames.map((name) => ({ value: name, label: words.columns[name] })),
            ]}
            onChange={(said) =>
              act(
                edits.mapHeading(
                  headings.map((heading) => heading.text),
                  text,
                  said,
                  headingOf(text).column !== undefined,
                ),
              )
            }
          />
        ))}
      </fieldset>
      <p className="quiet small">{words.mapKept}</p>
    </details>
  );
}
