import { useState } from 'react';
import type { Hazard, UpkeepEntry } from '../../src/model';
import type { CheckState, StartingCheck } from '../../src/upkeep';
import { Cautions } from '../panels/Cautions';
import { Button } from '../parts/Button';
import { useWays } from '../store/selectors';
import { noteDone, stateName, takeBackNote, useCheckStates } from '../store/upkeep';
import { useAllWords } from '../words';
import { dayAndTime } from '../words/format';
import type { Initials } from './initials';
import { NozzlesFailed } from './NozzlesFailed';

/** The check that may fail, and then takes time and ink. */
const NOZZLES = 'nozzles' satisfies StartingCheck;

const keyOf = ({ check, machine }: CheckState) => `${check.id} ${machine?.id}`;

/** The checks that are due, each with its button; below, those that are done for now and can be taken back. */
export function CheckList({
  initials,
  note,
  onNoted,
}: {
  initials: Initials;
  note: string;
  onNoted: () => void;
}) {
  const catalogue = useAllWords();
  const { upkeep: words } = catalogue;
  const ways = useWays();
  const states = useCheckStates();
  const [said, setSaid] = useState('');
  const due = states.filter(({ standing }) => standing.kind !== 'done');
  const done = states.filter(({ standing }) => standing.kind === 'done');
  const tell = (state: CheckState) => {
    const by = initials();
    if (by === null) return;
    setSaid(words.noted(noteDone(state, note, by)));
    onNoted();
  };
  const takeBack = (last: UpkeepEntry, name: string) => {
    const by = initials();
    if (by === null) return;
    takeBackNote(last, by);
    setSaid(words.tookBack(name));
  };
  const failedOf = (state: CheckState) => (
    <NozzlesFailed
      of={state}
      initials={initials}
      note={note}
      onNoted={(told) => {
        onNoted();
        setSaid(told);
      }}
    />
  );
  const hazards = [...new Set(due.map(({ check }) => check.hazard))].filter(
    (hazard): hazard is Exclude<Hazard, 'none'> => hazard !== 'none',
  );
  return (
    <section aria-labelledby="upkeep-due-title">
      <h3 id="upkeep-due-title">{words.due}</h3>
      <p className="quiet small" role="status">
        {said}
      </p>
      {due.length === 0 && <p className="quiet">{words.nothingDue}</p>}
      <ul className="check-list" data-testid="due-checks">
        {due.map((state) => {
          const name = stateName(state, catalogue);
          return (
            <li key={keyOf(state)}>
              <span className="check-name">
                {name}{' '}
                <span className="quiet small">
                  {words.interval(state.check.interval, ways)} ·{' '}
                  <span className={state.standing.kind === 'never' ? '' : 'care'}>
                    {words.standing(state.standing, ways)}
                  </span>
                </span>
              </span>
              <Button writes aria-label={words.doneOf(name)} onPress={() => tell(state)}>
                {words.done}
              </Button>
              {state.check.id === NOZZLES && failedOf(state)}
            </li>
          );
        })}
      </ul>
      <Cautions
        small
        cautions={hazards.map((hazard) => words.cautions[hazard])}
        dusty={hazards.includes('powder')}
      />
      {hazards.length > 0 && <p className="quiet small">{words.deference}</p>}
      {done.length > 0 && (
        <>
          <h3>{words.doneFor}</h3>
          <ul className="check-list" data-testid="done-checks">
            {done.map((state) => {
              const name = stateName(state, catalogue);
              const { last } = state;
              return (
                <li key={keyOf(state)}>
                  <span className="check-name">
                    {name}{' '}
                    <span className="quiet small">
                      {last
                        ? words.lastDone(dayAndTime(last.at, ways), last.by)
                        : words.interval(state.check.interval, ways)}
                    </span>
                  </span>
                  {last && (
                    <Button
                      writes
                      weight="plain"
                      aria-label={words.takeBackOf(name)}
                      onPress={() => takeBack(last, name)}
                    >
                      {words.takeBack}
                    </Button>
                  )}
                  {state.check.id === NOZZLES && failedOf(state)}
                </li>
              );
            })}
          </ul>
        </>
      )}
    </section>
  );
}
