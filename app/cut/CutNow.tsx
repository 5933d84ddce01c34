import type { CutStep, SpanOrder } from '../../src/cutting';
import type { LaidCopy, LaidRun } from '../../src/layout';
import type { Thumbnail } from '../panels/useThumbnails';
import { OrderCode } from '../parts/OrderCode';
import { useOrdersOf, useWays } from '../store/selectors';
import { useAllWords, useWords } from '../words';
import { dueDay, onRulers } from '../words/format';

const named = ({ order, number }: LaidCopy): string => `${order.code} ${number}`;

/** The step at hand: the figure first, to be read at arm's length. */
export function CutNow({
  run,
  pictures,
  order,
  step,
  at,
  out,
}: {
  run: LaidRun;
  /** Of the artwork on the run, by its id. */
  pictures: ReadonlyMap<string, Thumbnail>;
  order: SpanOrder;
  step: CutStep;
  at: number;
  out: number;
}) {
  const { cut: words } = useAllWords();
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
        <WhatItIs run={run} copy={copy} picture={pictures.get(copy.transfer.artwork ?? '')} />
      </>
    );
  }
  const isStraight = steps.every(({ kind }) => kind === 'cut');
  return (
    <>
      <p className="count">
        {isStraight
          ? words.cutOf(at + 1, steps.length, ways)
          : words.cutOf(step.number, steps.filter(({ kind }) => kind === 'cut').length, ways)}
      </p>
      <p className="big">{words.length(...onRulers(step.fromEdge, ways))}</p>
      <p>{step.axis === 'across' ? words.across : words.along}</p>
      <p>
        {words.off(step.off.length, ways)}
        {step.frees.length > 0 && `; ${words.frees(step.frees.map(named).join(', '))}`}
      </p>
    </>
  );
}

/** What the copy in the hand is, and for whom: by picture, name, order and due day. */
function WhatItIs({
  run,
  copy: { order, transfer },
  picture,
}: {
  run: LaidRun;
  copy: LaidCopy;
  picture: Thumbnail | undefined;
}) {
  const { orders: words } = useWords();
  const ways = useWays();
  const told = useOrdersOf(run)[order.id];
  const due = told?.due ?? null;
  return (
    <div className="what-it-is">
      {picture && <img src={picture.url} alt="" />}
      <p>
        {transfer.name}
        <br />
        <span className="quiet">
          {told?.name}
          {due !== null && `, ${words.dueOn(dueDay(due, ways))}`}
        </span>
      </p>
    </div>
  );
}
