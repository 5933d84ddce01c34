import { type LaidRun, runFigures } from '../../src/layout';
import { isByOutlines } from '../../src/model';
import type { FilmAmount } from '../../src/packing';
import { stopCommand } from '../commands';
import { CommandButton } from '../commands/CommandButton';
import { usePlanning } from '../store/planning';
import { useLaidRun, useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { useWords } from '../words';
import { percent, percentAtMost } from '../words/format';
import { useShortest } from './useShortest';

/** How near a layout is to what none goes below; `null` where it is proven to be there. */
function HowNear({ run, least }: { run: LaidRun; least: FilmAmount | null }) {
  const { film: words } = useWords();
  const ways = useWays();
  const { length, sheets, waste } = runFigures(run);
  if (run.film.kind === 'sheets') {
    const more = least?.kind === 'sheets' ? sheets - least.sheets : 0;
    return more > 0 ? words.atMostSheets(more, ways) : words.provenSheets;
  }
  const over = least?.kind === 'roll' && least.length > 0 ? length / least.length - 1 : 0;
  // Of layouts by outlines it can be proven how short none is, far from what any comes to.
  if (over > 0 && isByOutlines(run.view.run, run.film)) return words.covered(percent(1 - waste, ways));
  return over > 0 ? words.atMost(percentAtMost(over, ways)) : words.proven;
}

/** How near the layout is to the shortest possible, and the bar and the stop while a better one is looked for. */
export function LayoutProgress() {
  const { film: words } = useWords();
  const { planning, provenFor } = usePlanning();
  const copies = useShop(({ book }) => book.copy);
  const run = useLaidRun();
  const shortest = useShortest();
  const working = planning.kind === 'working';
  const proven = provenFor === copies;
  if (!working && (!run || run.copies.length === 0)) return null;
  return (
    <div className="layout-progress">
      <span className="quiet small" role="status">
        {run && run.copies.length > 0 && (proven || shortest) && (
          <HowNear run={run} least={proven ? null : (shortest?.film ?? null)} />
        )}
        {working && `, ${words.stillLooking}`}
      </span>
      {working && (
        <>
          <div
            className="progress"
            role="progressbar"
            aria-label={words.looking}
            aria-valuenow={Math.round(planning.fraction * 100)}
          >
            <div className="bar">
              <div className="fill" style={{ width: `${planning.fraction * 100}%` }} />
            </div>
          </div>
          <CommandButton command={stopCommand} weight="plain" />
        </>
      )}
    </div>
  );
}
