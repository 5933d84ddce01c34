import { type ReactNode, useState } from 'react';
import type { LaidRun } from '../../src/layout';
import { type CheckState, isDueAtPrint } from '../../src/upkeep';
import { Cautions } from '../panels/Cautions';
import { InitialsField } from '../panels/InitialsField';
import { Button } from '../parts/Button';
import { initialsNow } from '../store/initials';
import { printerOfRun, useWays } from '../store/selectors';
import { noteDone, stateName, useCheckStates } from '../store/upkeep';
import { useAllWords } from '../words';

const keyOf = ({ check, machine }: CheckState) => `${check.id} ${machine?.id}`;

/** What is due before a run's printer prints again, since it stood still; another device asks for that of what it has handed over. */
function useDueAtPrint(run: LaidRun | null): readonly CheckState[] {
  const states = useCheckStates();
  const printer = run && !run.view.run.received ? printerOfRun(run).id : null;
  return states.filter((state) => printer !== null && state.machine?.id === printer && isDueAtPrint(state));
}

/**
 * The checks that the next print waits for, one after the other in the place of what comes then, which holds nothing up: any may be
 * passed by.
 * @param run the one that is printed next; `null` while something else comes first
 */
export function BeforePrint({ run, children }: { run: LaidRun | null; children: ReactNode }) {
  const due = useDueAtPrint(run);
  const { upkeep: words } = useAllWords();
  const [passed, setPassed] = useState<readonly string[]>([]);
  const first = due.find((state) => !passed.includes(keyOf(state)));
  if (!first) return children;
  return (
    <section className="next-card" aria-label={words.beforePrint}>
      <Check key={keyOf(first)} state={first} onPass={() => setPassed([...passed, keyOf(first)])} />
    </section>
  );
}

/** A check, ticked off where the print is: what, after how long, what can hurt. */
function Check({ state, onPass }: { state: CheckState; onPass: () => void }) {
  const catalogue = useAllWords();
  const { upkeep: words } = catalogue;
  const ways = useWays();
  const [isAsked, setIsAsked] = useState(() => initialsNow() === '');
  const [isMissing, setIsMissing] = useState(false);
  const { interval, hazard } = state.check;
  const tell = () => {
    const by = initialsNow();
    setIsMissing(by === '');
    setIsAsked(isAsked || by === '');
    if (by !== '') noteDone(state, '', by);
  };
  return (
    <>
      <p className="quiet small">
        {words.beforePrint} · {words.interval(interval, ways)}
      </p>
      <p className="sentence">{stateName(state, catalogue)}</p>
      {hazard !== 'none' && (
        <>
          <Cautions cautions={[words.cautions[hazard]]} dusty={hazard === 'powder'} />
          <p className="quiet small">{words.deference}</p>
        </>
      )}
      {isAsked && <InitialsField problem={isMissing ? words.byNeeded : null} />}
      <Button writes weight="primary" onPress={tell}>
        {words.done}
      </Button>
      <Button weight="plain" onPress={onPass}>
        {words.pass}
      </Button>
    </>
  );
}
