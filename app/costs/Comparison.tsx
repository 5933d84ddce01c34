import { useEffect, useRef, useState } from 'react';
import { changesLayout, type LaidRun, wasteOver } from '../../src/layout';
import type { Book, Film } from '../../src/model';
import { workOf } from '../../src/pressing';
import { findMakespan } from '../../src/pressing/browser';
import type { Minor } from '../../src/units';
import { Button } from '../parts/Button';
import { TryButton } from '../parts/TryButton';
import { costsTried } from '../store/costs';
import { sayFailed } from '../store/failures';
import { settingsOrFirst, useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { type Found, type TrialBase, useTrials } from '../store/trials';
import { useAllWords } from '../words';
import { filmLength, money, percent, spoken } from '../words/format';
import { OtherLength, OtherTradeSize } from './OtherFilm';
import { otherGap, otherWidth, type Way, waysOf } from './ways';
import './costs.css';

const costs = new WeakMap<Found, Minor>();

/** What a run would cost in all. */
function costOf(found: Found, laid: LaidRun): Minor {
  const known = costs.get(found) ?? costsTried(found.book, laid).sheet.amount;
  costs.set(found, known);
  return known;
}

/** Sequences tried to tell how long a run would take. */
const SEQUENCES = 60;
const SEED = 1;

/** Seconds from the first print to the last bag of what was found; `null` where there is no timeline. */
function useTimes(found: readonly Found[], book: Book): ReadonlyMap<Found, number | null> {
  const [times, setTimes] = useState<ReadonlyMap<Found, number | null>>(new Map());
  const asked = useRef(new Set<Found>());
  const leaving = useRef(new AbortController());
  useEffect(() => () => leaving.current.abort(), []);
  useEffect(() => {
    const { station } = settingsOrFirst(book);
    for (const each of found) {
      if (asked.current.has(each)) continue;
      asked.current.add(each);
      const work = each.laid && workOf(each.laid, station, new Date(0));
      const told = (time: number | null) => setTimes((now) => new Map(now).set(each, time));
      if (!work?.ok) told(null);
      else {
        const { signal } = leaving.current;
        void findMakespan(work.value.problem, { seed: SEED, iterations: SEQUENCES, signal })
          .then(told)
          .catch((error) => {
            told(null);
            sayFailed('schedule', error);
          });
      }
    }
  }, [found, book]);
  return times;
}

interface ComparisonProps {
  /** What the ways differ from. */
  film: Film;
  /** What is laid out. */
  bench: (book: Book) => TrialBase;
  /** Whether there are several orders. */
  hasOrders: boolean;
  /** What the cost of all is called. */
  cost: string;
  remark: string | null;
  onTake: ((way: Way, found: Found) => void) | null;
}

/** Ways to lay copies out, side by side: each is laid out in the background, at once and again for every way that is added. */
export function Comparison({ film, bench, hasOrders, cost, remark, onTake }: ComparisonProps) {
  const words = useAllWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const [own, setOwn] = useState<readonly Way[]>([]);
  const [laidOut, setLaidOut] = useState<{ book: Book; copies: number } | null>(null);
  const { trying, share, found, start, stop } = useTrials();
  const times = useTimes(found, book);
  const listed = [...waysOf(book, film, words, hasOrders), ...own];
  const lay = () => {
    const now = useShop.getState().book;
    const own = bench(now);
    const copies = Object.values(own.book.copy).filter(({ run }) => run === own.run.id).length;
    setLaidOut({ book: now, copies });
    void start(
      own,
      listed.map(({ trial }) => trial),
    );
  };
  const begin = useRef(lay);
  begin.current = lay;
  // At once, and again for every way that is added.
  useEffect(() => {
    if (own.length >= 0) begin.current();
  }, [own]);
  const isStale = laidOut !== null && changesLayout(book, laidOut.book);
  const least = Math.min(...found.filter(({ tried }) => tried.leftOut === 0).map(({ tried }) => tried.cost));
  const copies = found[0]?.places.length ?? laidOut?.copies ?? 0;
  const add = (way: Way) => setOwn([...own.filter(({ label }) => label !== way.label), way]);
  return (
    <>
      <p className="quiet">{words.compare.hint(copies, ways)}</p>
      <div className="ways-scroll">
        <table className="ways stacking">
          <thead>
            <tr>
              <th scope="col">{words.compare.way}</th>
              <th scope="col">{words.compare.film}</th>
              <th scope="col">{words.compare.waste}</th>
              <th scope="col">{words.compare.filmCost}</th>
              <th scope="col">{cost}</th>
              <th scope="col">{words.compare.minutes}</th>
              <td />
            </tr>
          </thead>
          <tbody>
            {listed.map((way, at) => (
              <WayRow
                key={way.label}
                way={way}
                found={found[at]}
                time={found[at] && times.get(found[at])}
                isLeast={found[at]?.tried.cost === least}
                costName={cost}
                onTake={onTake && !isStale ? (which) => onTake(way, which) : null}
              />
            ))}
          </tbody>
        </table>
      </div>
      {remark !== null && <p className="quiet small">{remark}</p>}
      {onTake && isStale && <p className="care small">{words.compare.stale}</p>}
      <div className="ways-acts">
        <TryButton
          label={found.length > 0 ? words.compare.again : words.compare.start}
          trying={trying}
          share={share}
          onStart={lay}
          onStop={stop}
        />
        <OtherTradeSize film={film} onAdd={add} />
        <OtherLength
          label={words.compare.addWidth}
          hint={words.compare.priceByArea}
          onAdd={(width) => add(otherWidth(film, width, words, ways))}
        />
        <OtherLength label={words.compare.addGap} onAdd={(gap) => add(otherGap(film, gap, words, ways))} />
      </div>
    </>
  );
}

function WayRow({
  way,
  found,
  time,
  isLeast,
  costName,
  onTake,
}: {
  way: Way;
  found: Found | undefined;
  time: number | null | undefined;
  isLeast: boolean;
  costName: string;
  onTake: ((found: Found) => void) | null;
}) {
  const { compare: words, filmForm } = useAllWords();
  const ways = useWays();
  if (!found) {
    return (
      <tr data-done="false">
        <th scope="row">{way.label}</th>
        <td colSpan={6}>…</td>
      </tr>
    );
  }
  const { tried, laid } = found;
  const isRoll = tried.film.kind === 'roll';
  const length = laid && (isRoll ? tried.length : laid.lengthUsed);
  return (
    <tr data-done="true">
      <th scope="row">
        {way.label}
        {tried.leftOut > 0 && <span className="care small"> {words.leftOut(tried.leftOut, ways)}</span>}
      </th>
      <td data-label={words.film}>
        {isRoll ? filmLength(tried.length, ways) : filmForm.sheets(tried.sheets, ways)}
      </td>
      <td data-label={words.waste}>
        {laid && length ? percent(wasteOver(laid, length), ways) : words.unknown}
      </td>
      <td data-label={words.filmCost}>
        {money(tried.cost, ways)}
        {isLeast && <b className="least"> {words.cheapest}</b>}
      </td>
      <td data-label={costName}>{laid ? money(costOf(found, laid), ways) : words.unknown}</td>
      <td data-label={words.minutes}>
        {time === undefined ? '…' : time === null ? words.unknown : spoken(time, ways)}
      </td>
      <td>
        {onTake && (
          <Button
            writes
            weight="plain"
            aria-label={words.applyNamed(way.label)}
            onPress={() => onTake(found)}
          >
            {words.apply}
          </Button>
        )}
      </td>
    </tr>
  );
}
