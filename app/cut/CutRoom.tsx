import { useState } from 'react';
import { type CutStep, cutOrder, type SpanOrder } from '../../src/cutting';
import { benchEdits } from '../../src/editing';
import type { LaidCopy, LaidRun } from '../../src/layout';
import { isPrinted } from '../../src/model';
import { apartKey, cutKey, ticked, ticksOf } from '../../src/pressing';
import { HandOverButton } from '../panels/HandOverButton';
import { NoRun } from '../panels/NoRun';
import { RunChoice } from '../panels/RunChoice';
import { useThumbnails } from '../panels/useThumbnails';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Empty } from '../parts/Empty';
import { RoomHead } from '../parts/RoomHead';
import { initialsNow } from '../store/initials';
import { nextRunName } from '../store/next-run';
import { stationOf, useBenchRun, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { goTo, openDialog } from '../store/view';
import { CutNow } from './CutNow';
import { Pile } from './Pile';
import { SpanPlan } from './SpanPlan';
import './cut.css';
import { useAllWords } from '../words';

/** The run taken apart step by step, on a phone in one hand: what to cut now, where, and what the pile must hold. */
export function CutRoom() {
  const { cut: words, runs } = useAllWords();
  const run = useBenchRun();
  if (!run) return <NoRun title={words.title} />;
  if (run.copies.length === 0) {
    return (
      <Empty title={words.title}>
        <p>{words.nothing}</p>
        <Button weight="primary" onPress={() => goTo('film')}>
          {runs.leadOn.draft}
        </Button>
        <HandOverButton />
      </Empty>
    );
  }
  if (run.state === 'closed') {
    return (
      <Empty title={words.title}>
        <p>{words.closed}</p>
        <div className="actions">
          <RunChoice run={run} />
          <Button onPress={() => goTo('cut-map')}>{words.map}</Button>
        </div>
      </Empty>
    );
  }
  return <Steps key={run.id} run={run} />;
}

/** The tick of a step: a copy is out, or a cut is made. */
const keyOf = (span: number, step: CutStep): string =>
  step.kind === 'copy' ? cutKey.copy(step.copy.id) : cutKey.cut(span, step.number);

/** The steps of a span that are done: each by itself, or all of them at once. */
const stepsDone = ({ span, steps }: SpanOrder, done: ReadonlyMap<string, string>): CutStep[] =>
  done.has(apartKey(span)) ? [...steps] : steps.filter((step) => done.has(keyOf(span, step)));

/** The copies of a span that ticks say are out. */
function cutOut(order: SpanOrder, done: ReadonlyMap<string, string>): LaidCopy[] {
  const freed = new Set<string>(
    stepsDone(order, done).flatMap((step) =>
      step.kind === 'copy' ? [step.copy.id] : step.frees.map(({ id }) => id),
    ),
  );
  return order.copies.filter(({ id }) => freed.has(id));
}

function Steps({ run }: { run: LaidRun }) {
  const { cut: words, press } = useAllWords();
  const ways = useWays();
  const ticks = useShop(({ book }) => book.tick);
  const station = stationOf(run);
  // Once for all steps: they follow one another quickly.
  const pictures = useThumbnails(run);
  const orders = cutOrder(run);
  const done = ticked(ticksOf({ tick: ticks }, run.id));
  const isOpen = (order: SpanOrder) => stepsDone(order, done).length < order.steps.length;
  const [chosen, setChosen] = useState<number | null>(null);
  const span = orders[chosen ?? Math.max(0, orders.findIndex(isOpen))];
  if (!span) return null;
  const isDone = new Set(stepsDone(span, done));
  const at = span.steps.findIndex((step) => !isDone.has(step));
  const step = span.steps[at];
  const before = at < 0 ? span.steps.at(-1) : span.steps[at - 1];
  const out = cutOut(span, done);
  const allOut = orders.flatMap((order) => cutOut(order, done));
  const tick = (subject: string, isDone: boolean) =>
    act(benchEdits.tickJobs(run.id, [subject], { done: isDone, by: initialsNow() }, nextRunName()));
  // A span that was ticked whole is taken back whole.
  const takeBack = () => {
    if (done.has(apartKey(span.span))) tick(apartKey(span.span), false);
    else if (before) tick(keyOf(span.span, before), false);
  };
  const next = orders.findIndex((order) => order.span > span.span && order.steps.length > 0);
  return (
    <>
      <RoomHead title={words.title} told={`${run.name} · ${words.span(span.span, orders.length, ways)}`}>
        <RunChoice run={run} />
        <Choice
          label={words.spanChoice}
          value={String(span.span)}
          options={orders.map((order) => ({
            value: String(order.span),
            label: words.span(order.span, orders.length, ways),
          }))}
          onChange={(value) => setChosen(Number(value))}
        />
        <HandOverButton />
        <Button onPress={() => goTo('cut-map')}>{words.map}</Button>
      </RoomHead>
      {run.state === 'draft' && <p className="care">{words.draft}</p>}
      <div className="cut-room">
        <section className="cut-now" aria-live="polite">
          {step ? (
            <CutNow run={run} pictures={pictures} order={span} step={step} at={at} out={out.length} />
          ) : (
            <p className="big">{words.allCut(span.copies.length, ways)}</p>
          )}
          <div className="cut-acts">
            <Button writes isDisabled={!before} onPress={takeBack}>
              {done.has(apartKey(span.span)) ? words.wholeBack : words.back}
            </Button>
            {step ? (
              <Button writes weight="primary" onPress={() => tick(keyOf(span.span, step), true)}>
                {words.done}
              </Button>
            ) : (
              <Button weight="primary" isDisabled={next < 0} onPress={() => setChosen(next)}>
                {words.nextSpan}
              </Button>
            )}
          </div>
        </section>
        <SpanPlan run={run} order={span} step={step ?? null} out={out} />
        <div className="cut-notes">
          <p className="quiet small">{station.cutApart === 'before-powder' ? words.before : words.after}</p>
          <p className="quiet small">{press.cautions.apart}</p>
          {step && (
            <Button writes onPress={() => tick(apartKey(span.span), true)}>
              {words.whole}
            </Button>
          )}
          {isPrinted(run) && (
            <Button
              onPress={() =>
                openDialog({
                  kind: 'spoil',
                  copy: step?.kind === 'copy' ? step.copy.id : (out.at(-1)?.id ?? null),
                  stage: 'cut',
                })
              }
            >
              {press.spoil}
            </Button>
          )}
        </div>
        <Pile run={run} title={words.pile} copies={span.copies} out={out} />
        <Pile run={run} title={words.pileAll} copies={run.copies} out={allOut} />
      </div>
    </>
  );
}
