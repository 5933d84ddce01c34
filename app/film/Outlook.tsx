import { useMemo } from 'react';
import { runConsumption } from '../../src/costing';
import type { LaidRun } from '../../src/layout';
import { runCoverage } from '../../src/log';
import { filmOutlook, shortages, unitOf } from '../../src/stock';
import { useCoverageOf } from '../store/coverage';
import { settingsOrFirst, useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { useWords } from '../words';

/** Whether film, ink and powder last for a run and for all that is planned on its film; said before anything is printed. */
export function Outlook({ run }: { run: LaidRun }) {
  const { stock: words } = useWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const coverageOf = useCoverageOf();
  const film = useMemo(() => filmOutlook(book, run), [book, run]);
  if (film === null) return null;
  const told = (amount: number) => words.amount(Math.abs(amount), unitOf(run.film), ways);
  const coverage = run.copies.length > 0 ? runCoverage(run, coverageOf) : null;
  const short = coverage ? shortages(book, runConsumption(coverage, settingsOrFirst(book))) : [];
  const { afterRun, afterAll, afterWanted, runs } = film;
  return (
    <>
      {afterRun < 0 && <p className="care small">{words.filmTooShort(told(afterRun))}</p>}
      {afterRun >= 0 && afterWanted < 0 && (
        <p className="care small">{words.filmTooShortForWanted(told(afterWanted))}</p>
      )}
      {afterRun >= 0 && runs > 1 && afterAll < 0 && (
        <p className="care small">{words.filmTooShortForAll(told(afterAll), runs, ways)}</p>
      )}
      {runs > 1 && afterAll >= 0 && (
        <p className="quiet small">{words.lastsAll(told(afterAll), runs, ways)}</p>
      )}
      {short.map(({ kind, present, needed }) => {
        const unit = kind === 'powder' ? ('mass' as const) : ('volume' as const);
        return (
          <p key={kind} className="care small">
            {words.supplyShort(
              words.kindNames[kind],
              words.amount(present, unit, ways),
              words.amount(needed, unit, ways),
            )}
          </p>
        );
      })}
    </>
  );
}
