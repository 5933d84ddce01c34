import { Suspense } from 'react';
import {
  brokenWishes,
  cleanOffcut,
  type LaidRun,
  orderStretch,
  runFigures,
  straightCuts,
  wasteOver,
} from '../../src/layout';
import { isByOutlines, isCutStraight } from '../../src/model';
import { um } from '../../src/units';
import { part } from '../offline/part';
import { useHeld } from '../store/held';
import { useWays } from '../store/selectors';
import { useDay } from '../store/timeline';
import { openDialog } from '../store/view';
import { useWords } from '../words';
import { area, filmLength, momentOf, money, percent, shortLength } from '../words/format';
import { Dues } from './Dues';
import { Outlook } from './Outlook';
import { useShortest } from './useShortest';

// Known once the day is worked out.
const TooLargeNotes = part(() => import('../panels/TooLargeNotes').then(({ TooLargeNotes: notes }) => notes));

/** The run as a person would say it, with the figures large; they follow copies that are dragged. */
export function RunSentence({ run }: { run: LaidRun }) {
  const { film: words } = useWords();
  const ways = useWays();
  const held = useHeld((state) => state.held);
  const shown = held?.run ?? run;
  const { film } = run;
  const { length, sheets, waste, cost } = runFigures(shown);
  const day = useDay('quick');
  // Told as soon as it is known, in the room that is kept for it: nothing below may move under a hand.
  const own =
    day.kind === 'ready' ? day.day.timeline.runs.find((other) => other.run.id === run.id) : undefined;
  const known =
    day.kind === 'ready' && own ? momentOf(day.day.origin + 1000 * own.end, ways) : { day: null, time: '…' };
  const doneBy = own || day.kind === 'working' ? known : null;
  const used = film.kind === 'roll' ? filmLength(length, ways) : words.sheets(sheets, ways);
  return (
    <>
      {shown.copies.length === 0 ? (
        <p className="sentence">{words.nothingLaid}</p>
      ) : (
        <p className="sentence" data-testid="sentence">
          {words
            .sentence(used, percent(waste, ways), money(cost, ways), doneBy)
            .map(({ text, figure, opens }) => {
              if (!figure) return text;
              if (!opens) return <strong key={text}>{text}</strong>;
              return (
                <button
                  type="button"
                  key="cost"
                  className="opens"
                  aria-label={words.costOpens(text)}
                  onClick={() => openDialog({ kind: 'cost-sheet', run: run.id })}
                >
                  {text}
                </button>
              );
            })}
        </p>
      )}
      <div className="run-facts">
        {day.kind === 'ready' && run.state === 'draft' && (
          <Suspense>
            <TooLargeNotes tooLarge={day.day.plan.work.tooLarge.filter((large) => large.run.id === run.id)} />
          </Suspense>
        )}
        <Dues run={run} day={day} />
        <Details run={shown} />
        <Outlook run={run} />
        <Offcut run={shown} />
        <Orders run={shown} />
        {shown.spans === null && film.kind === 'roll' && film.spanMax !== null && (
          <p className="care small">{words.uncuttable(shortLength(film.spanMax, ways))}</p>
        )}
        <Wishes run={shown} />
        {held?.refusals[0] && <p className="error small">{words.refusedShort(held.refusals[0], ways)}</p>}
      </div>
    </>
  );
}

/** What was asked for of the layout and does not hold; else, for how many straight cuts it asks. */
function Wishes({ run }: { run: LaidRun }) {
  const { film: words } = useWords();
  const ways = useWays();
  const broken = brokenWishes(run);
  const cuts = !isCutStraight(run.film) || run.copies.length === 0 ? null : straightCuts(run);
  const byOutlines = isByOutlines(run.view.run, run.film);
  const boxed = byOutlines ? run.copies.filter(({ outline }) => outline === null).length : 0;
  return (
    <>
      {byOutlines && run.film.together.kind !== 'any' && <p className="quiet small">{words.boxesTogether}</p>}
      {boxed > 0 && <p className="quiet small">{words.layByOutlines(boxed, ways)}</p>}
      {broken.map((wish) => (
        <p key={wish} className="care small">
          {words.broken[wish]}
        </p>
      ))}
      {cuts !== null && broken.length === 0 && (
        <p className="quiet small">{words.straightCuts(cuts, ways)}</p>
      )}
    </>
  );
}

/** What is left of the film, and what no layout can go below. */
function Details({ run }: { run: LaidRun }) {
  const { film: words } = useWords();
  const ways = useWays();
  const shortest = useShortest();
  const { film } = run;
  const { length, sheets } = runFigures(run);
  const left =
    film.kind === 'roll'
      ? words.leftOnRoll(filmLength(um(Math.max(0, film.lengthLeft - length)), ways))
      : words.leftOfSheets(Math.max(0, film.sheetsLeft - sheets), ways);
  if (run.copies.length === 0 || shortest === null) {
    return <p className="quiet small">{left}</p>;
  }
  const least =
    shortest.film.kind === 'roll'
      ? filmLength(shortest.film.length, ways)
      : words.sheets(shortest.film.sheets, ways);
  if (film.kind === 'roll' && isByOutlines(run.view.run, film))
    return <p className="quiet small">{words.detailsByOutlines(left, least)}</p>;
  return (
    <p className="quiet small" title={words.gapsAreWaste}>
      {(film.kind === 'roll' ? words.details : words.detailsOfSheets)(
        left,
        least,
        percent(Math.max(0, wasteOver(run, shortest.length)), ways),
      )}
    </p>
  );
}

/** How near to each other the copies of an order lie, where that was asked for. */
function Orders({ run }: { run: LaidRun }) {
  const { film: words } = useWords();
  const ways = useWays();
  const { together } = run.film;
  const orders = new Set(run.copies.map(({ order }) => order.id));
  if (together.kind === 'any' || orders.size < 2) return null;
  return <p className="quiet small">{words.ordersNear(percent(orderStretch(run), ways))}</p>;
}

/** What of the last sheet can be kept and used again. */
function Offcut({ run }: { run: LaidRun }) {
  const { film: words } = useWords();
  const ways = useWays();
  const offcut = cleanOffcut(run);
  if (offcut === 0) return null;
  return <p className="quiet small">{words.cleanOffcut(area(run.film.width, offcut, ways))}</p>;
}
