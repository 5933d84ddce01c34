import type { LaidCopy, LaidRun } from '../../src/layout';
import { reveal } from '../store/camera';
import { useWays } from '../store/selectors';
import { select, selectAlso, useView } from '../store/view';
import { useWords } from '../words';
import { angle, area, rulerLength } from '../words/format';

/** The rows of the table twin: the keys of the film are heard here too. */
export function CopyRows({ run }: { run: LaidRun }) {
  const { film: words } = useWords();
  const selected = useView((state) => state.selected);
  const first = (run.copies.find((copy) => selected.has(copy.id)) ?? run.copies[0])?.id;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the screen is scrolled by keys
    <section className="table-scroll" data-keys="film" tabIndex={0} aria-label={words.table}>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.copy}</th>
            <th scope="col">{words.size}</th>
            <th scope="col">{words.across}</th>
            <th scope="col">{words.along}</th>
            <th scope="col">{words.turned}</th>
            <th scope="col">{words.pinned}</th>
          </tr>
        </thead>
        <tbody>
          {run.copies.map((copy) => (
            <CopyRow
              key={copy.id}
              copy={copy}
              selected={selected.has(copy.id)}
              inTabOrder={copy.id === first}
            />
          ))}
        </tbody>
      </table>
    </section>
  );
}

function CopyRow({ copy, selected, inTabOrder }: { copy: LaidCopy; selected: boolean; inTabOrder: boolean }) {
  const { common } = useWords();
  const ways = useWays();
  const yesNo = (value: boolean) => (value ? common.yes : common.no);
  return (
    <tr className={selected ? 'selected' : undefined}>
      <th scope="row">
        <button
          type="button"
          className="row-button"
          tabIndex={inTabOrder ? 0 : -1}
          aria-pressed={selected}
          ref={(button) => {
            // The keys that select the next copy are heard here: the focus goes with the selection.
            if (selected && button?.closest('table')?.contains(document.activeElement)) button.focus();
          }}
          onClick={(event) => {
            if (event.shiftKey || event.ctrlKey) selectAlso([copy.id]);
            else select(copy.id);
            reveal(copy.y, copy.y + copy.length);
          }}
        >
          {copy.order.code} {copy.number}, {copy.transfer.name}
        </button>
      </th>
      <td>{area(copy.width, copy.length, ways)}</td>
      <td>{rulerLength(copy.x, ways)}</td>
      <td>{rulerLength(copy.y, ways)}</td>
      <td>{angle(copy.angle, ways)}</td>
      <td>{yesNo(copy.pinned)}</td>
    </tr>
  );
}
