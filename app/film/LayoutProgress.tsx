import { Label, ProgressBar } from 'react-aria-components';
import { runFigures } from '../../src/layout';
import { stopCommand } from '../commands';
import { CommandButton } from '../commands/CommandButton';
import { usePlanning } from '../store/planning';
import { useLaidRun, useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { useWords } from '../words';
import { percent } from '../words/format';
import { useShortest } from './useShortest';

/** How near the layout is to the shortest possible, and the bar and the stop while a better one is looked for. */
export function LayoutProgress() {
  const { film: words } = useWords();
  const ways = useWays();
  const { planning, provenFor } = usePlanning();
  const copies = useShop(({ book }) => book.copy);
  const run = useLaidRun();
  const shortest = useShortest();
  const working = planning.kind === 'working';
  const proven = provenFor === copies;
  if (!working && (!run || run.copies.length === 0)) return null;
  const least = shortest?.length ?? 0;
  const above = run && least > 0 ? runFigures(run).length / least - 1 : null;
  const said =
    run?.film.kind === 'sheets'
      ? { proven: words.provenSheets, atMost: words.atMostSheets }
      : { proven: words.proven, atMost: words.atMost };
  return (
    <div className="layout-progress">
      <span className="quiet small" role="status">
        {proven
          ? said.proven
          : above !== null && run && run.copies.length > 0 && said.atMost(percent(above, ways))}
        {working && `, ${words.stillLooking}`}
      </span>
      {working && (
        <>
          <ProgressBar className="progress" value={planning.fraction * 100}>
            <Label className="visually-hidden">{words.looking}</Label>
            <div className="bar">
              <div className="fill" style={{ width: `${planning.fraction * 100}%` }} />
            </div>
          </ProgressBar>
          <CommandButton command={stopCommand} weight="plain" />
        </>
      )}
    </div>
  );
}
