import { useState } from 'react';
import type { LaidRun } from '../../src/layout';
import { NoRun } from '../panels/NoRun';
import { RunChoice } from '../panels/RunChoice';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Empty } from '../parts/Empty';
import { settingsOrFirst, useBenchRun } from '../store/selectors';
import { useShop } from '../store/shop';
import { type DayState, useDay } from '../store/timeline';
import { goTo } from '../store/view';
import { Card } from './Card';
import { DayFacts, OrderTimes } from './DayFacts';
import { whyNotPlanned } from './day-problems';
import { CareSlips, PackingSlips, PickList } from './OrderCards';
import { RunCard } from './RunCard';
import { Chart } from './TimeChart';
import '../parts/paper.css';
import '../parts/card-page.css';
import './press.css';
import './cards.css';
import { useAllWords, type Words } from '../words';

const kinds = ['run', 'day', 'pick', 'care', 'packing'] as const;

/** Why there is no chart of the day to print. */
function whyNoDay(
  run: LaidRun,
  state: Exclude<DayState, { kind: 'ready' }>,
  { press, failures }: Words,
): string {
  switch (state.kind) {
    case 'missing':
    case 'none':
      return run.state === 'closed'
        ? press.closed
        : whyNotPlanned(run, state)
            .map((problem) => press.missing[problem])
            .join(' ');
    case 'failed':
      return failures.schedule;
    case 'working':
      return press.working;
  }
}

/** What is printed for the press side: the run card, the day's chart, pick list, care slips and packing slips. */
export function CardsRoom() {
  const all = useAllWords();
  const { cards: words, press, runs } = all;
  const run = useBenchRun();
  const state = useDay('thorough');
  const { paper } = useShop(({ book }) => settingsOrFirst(book));
  const [kind, setKind] = useState<(typeof kinds)[number]>('run');
  const [made] = useState(() => new Date());
  if (!run) return <NoRun title={words.title} />;
  const card = { run, paper, made };
  return (
    <>
      <div className="room-head">
        <h1>{words.title}</h1>
        <div className="actions">
          <Button weight="plain" onPress={() => goTo('press')}>
            {words.back}
          </Button>
          <RunChoice run={run} />
          <Choice
            label={words.which}
            value={kind}
            options={kinds.map((value) => ({ value, label: words.kinds[value] }))}
            onChange={setKind}
          />
          <Button
            weight={run.copies.length === 0 ? 'normal' : 'primary'}
            isDisabled={run.copies.length === 0}
            onPress={() => print()}
          >
            {words.print}
          </Button>
        </div>
      </div>
      {run.copies.length === 0 && (
        <Empty>
          <p>{press.missing['nothing-laid']}</p>
          <Button weight="primary" onPress={() => goTo('film')}>
            {runs.leadOn.draft}
          </Button>
        </Empty>
      )}
      <div className="cards-paper" hidden={run.copies.length === 0}>
        {kind === 'run' && <RunCard {...card} />}
        {kind === 'pick' && <PickList {...card} />}
        {kind === 'care' && <CareSlips {...card} />}
        {kind === 'packing' && <PackingSlips {...card} />}
        {kind === 'day' && state.kind === 'ready' && (
          <Card paper={`${paper}-landscape`} title={words.dayTitle(run.name)}>
            <Chart day={state.day} width={1280} fits isPrinted />
            <DayFacts run={run} day={state.day} />
            <OrderTimes day={state.day} />
            <p className="closing">{press.deference}</p>
          </Card>
        )}
        {kind === 'day' && state.kind !== 'ready' && <p>{whyNoDay(run, state, all)}</p>}
      </div>
    </>
  );
}
