import { useState } from 'react';
import { type CutStep, cutOrder, type SpanOrder, tallyByOrder } from '../../src/cutting';
import { edits, ticksOf } from '../../src/editing';
import type { LaidCopy, LaidRun } from '../../src/layout';
import { apartKey, cutKey, ticked } from '../../src/pressing';
import { HandOverButton } from '../panels/HandOverButton';
import { RunChoice } from '../panels/RunChoice';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { OrderCode } from '../parts/OrderCode';
import { nextRunName } from '../store/next-run';
import { stationOf, useBenchRun, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { goTo } from '../store/view';
import { shortLength, tapeInches } from '../words/format';
import { SpanPlan } from './SpanPlan';
import './cut.css';
import { useWords } from '../words';

/** The run taken apart step by step, on a phone in one hand: what to cut now, where, and what the pile must hold. */
export function CutRoom() {
  const { cut: words, press } = useWords();
  const run = useBenchRun();
  if (!run) return null;
  if (run.copies.length === 0) {
    return (
      <section className="empty">
        <h1>{words.title}</h1>
        <p>{words.nothing}</p>
        <Button weight="primary" onPress={() => goTo('film')}>
          {press.leadOn.draft}
        </Button>
        <HandOverButton />
      </section>
    );
  }
  return <Steps run={run} />;
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
  const { cut: words, press } = useWords();
  const ways = useWays();
  const ticks = useShop(({ book }) => book.tick);
  const station = stationOf(run);
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
    act(edits.tickJobs(run.id, [subject], isDone, nextRunName()));
  // A span that was ticked whole is taken back whole.
  const takeBack = () => {
    if (done.has(apartKey(span.span))) tick(apartKey(span.span), false);
    else if (before) tick(keyOf(span.span, before), false);
  };
  const next = orders.findIndex((order) => order.span > span.span && order.steps.length > 0);
  return (
    <>
      <div className="room-head">
        <h1>{words.title}</h1>
        <div className="actions">
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
        </div>
      </div>
      {run.state === 'draft' && <p className="care">{words.draft}</p>}
      <div className="cut-room">
        <SpanPlan run={run} order={span} step={step ?? null} out={out} />
        <section className="cut-now" aria-live="polite">
          {step ? (
            <CutNow order={span} step={step} at={at} out={out.length} />
          ) : (
            <p className="big">{words.allCut(span.copies.length, ways)}</p>
          )}
          <p className="quiet small">{station.cutApart === 'before-powder' ? words.before : words.after}</p>
          <p className="quiet small">{press.cautions.apart}</p>
          <div className="cut-acts">
            <Button isDisabled={!before} onPress={takeBack}>
              {done.has(apartKey(span.span)) ? words.wholeBack : words.back}
            </Button>
            {step ? (
              <Button weight="primary" onPress={() => tick(keyOf(span.span, step), true)}>
                {words.done}
              </Button>
            ) : (
              <Button weight="primary" isDisabled={next < 0} onPress={() => setChosen(next)}>
                {words.nextSpan}
              </Button>
            )}
          </div>
          {step && (
            <p>
              <Button onPress={() => tick(apartKey(span.span), true)}>{words.whole}</Button>
            </p>
          )}
        </section>
        <Pile title={words.pile} copies={span.copies} out={out} />
        <Pile title={words.pileAll} copies={run.copies} out={allOut} />
      </div>
    </>
  );
}

const named = ({ order, number }: LaidCopy): string => `${order.code} ${number}`;

/** The step at hand in words and figures. */
function CutNow({ order, step, at, out }: { order: SpanOrder; step: CutStep; at: number; out: number }) {
  const { cut: words } = useWords();
  const ways = useWays();
  const { steps, copies } = order;
  if (step.kind === 'copy') {
    const { copy } = step;
    return (
      <>
        <p className="count">{words.copyOf(out + 1, copies.length, ways)}</p>
        <p className="big">
          <OrderCode code={copy.order.code} tint={copy.order.tint} /> {words.take(named(copy))}
        </p>
        <p>{copy.transfer.name}</p>
      </>
    );
  }
  const length = `${shortLength(step.fromEdge, { ...ways, unit: 'mm' })}, ${tapeInches(step.fromEdge)}`;
  const isStraight = steps.every(({ kind }) => kind === 'cut');
  return (
    <>
      <p className="count">
        {isStraight
          ? words.cutOf(at + 1, steps.length, ways)
          : words.cutOf(step.number, steps.filter(({ kind }) => kind === 'cut').length, ways)}
      </p>
      <p className="big">{step.axis === 'across' ? words.across(length) : words.along(length)}</p>
      <p>
        {words.off(step.off.length, ways)}
        {step.frees.length > 0 && `; ${words.frees(step.frees.map(named).join(', '))}`}
      </p>
    </>
  );
}

/** What a pile must hold of each order, and what of it is cut. */
function Pile({
  title,
  copies,
  out,
}: {
  title: string;
  copies: readonly LaidCopy[];
  out: readonly LaidCopy[];
}) {
  const { cut: words } = useWords();
  const ways = useWays();
  const cut = new Map(tallyByOrder(out).map(({ code, count }) => [code, count]));
  return (
    <section className="pile">
      <h2>{title}</h2>
      <ul>
        {tallyByOrder(copies).map(({ code, count }) => (
          <li key={code} data-whole={cut.get(code) === count}>
            {words.pileOf(code, cut.get(code) ?? 0, count, ways)}
          </li>
        ))}
      </ul>
    </section>
  );
}
