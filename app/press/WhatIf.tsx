import { useEffect, useRef, useState } from 'react';
import { type LaidRun, withSpans } from '../../src/layout';
import { asId, type Hours, type Station, type Stretch } from '../../src/model';
import {
  dayWork,
  type OpenRun,
  startingHeatPress,
  startingPerson,
  withAnotherPrinter,
} from '../../src/pressing';
import { findMakespan } from '../../src/pressing/browser';
import { um } from '../../src/units';
import { Button } from '../parts/Button';
import { sayFailed } from '../store/failures';
import { settingsOrFirst, useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { type Day, openRunsOf, termsOf } from '../store/timeline';
import { useAllWords, type Words } from '../words';
import { spoken } from '../words/format';

type Idea = keyof Words['press']['whatIfs'];

const ITERATIONS = 500;
const SEED = 1;
/** How long spans would be, were they shorter. */
const SHORTER = 2 / 3;

/** An hour earlier than a time of day, midnight at the earliest. */
const earlier = ({ from, to }: Stretch): Stretch => ({
  from: from < '01:00' ? '00:00' : `${String(Number(from.slice(0, 2)) - 1).padStart(2, '0')}${from.slice(2)}`,
  to,
});

const openedEarlier = ({ week, closed }: Hours): Hours => ({
  week: week.map(([first, ...others]) => (first ? [earlier(first), ...others] : [])),
  closed,
});

/** The id of what the shop does not have. */
const ANOTHER = 'another';

/** The equipment with one thing more. */
const more: Readonly<Record<Exclude<Idea, 'spans' | 'printer'>, (station: Station) => Station>> = {
  oven: (station) => ({ ...station, curer: 'oven' }),
  press: (station) => {
    const like = station.presses.at(-1) ?? startingHeatPress(asId(''));
    return { ...station, presses: [...station.presses, { ...like, id: asId(ANOTHER), name: '' }] };
  },
  hands: (station) => ({ ...station, people: [...station.people, startingPerson(asId(ANOTHER))] }),
  earlier: (station) => ({ ...station, hours: openedEarlier(station.hours) }),
};

/** What one more of something, or shorter spans, would gain over all open runs; worked out when asked for. */
export function WhatIf({ day }: { day: Day }) {
  const { press: words } = useAllWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const open = openRunsOf(book);
  const terms = termsOf(settingsOrFirst(book), day);
  const { station } = terms;
  const [gains, setGains] = useState<ReadonlyMap<Idea, number | null> | null>(null);
  const [busy, setBusy] = useState(false);
  const leaving = useRef<AbortController | null>(null);
  useEffect(() => () => leaving.current?.abort(), []);
  const ideas: Idea[] = [
    ...(station.curer === 'press' ? ['oven' as const] : []),
    'press',
    'hands',
    'printer',
    'earlier',
    'spans',
  ];

  const endOf = (runs: readonly OpenRun[], own: Station, signal: AbortSignal): Promise<number> =>
    findMakespan(dayWork(runs, { ...terms, station: own }).work.problem, {
      seed: SEED,
      iterations: ITERATIONS,
      signal,
    });
  /** All runs with an idea; `null` where it is not possible. */
  const endWith = async (idea: Idea, signal: AbortSignal): Promise<number | null> => {
    if (idea === 'spans') {
      const cut = open.flatMap((own) => {
        const laid = shorter(own.laid);
        return laid ? [{ ...own, laid }] : [];
      });
      return cut.length === open.length ? endOf(cut, station, signal) : null;
    }
    if (idea === 'printer') {
      const other = withAnotherPrinter(open, station, asId(ANOTHER));
      return endOf(other.open, other.station, signal);
    }
    const change = more[idea];
    return endOf(
      open.map((own) => ({ ...own, station: change(own.station) })),
      change(station),
      signal,
    );
  };
  const tryAll = async (signal: AbortSignal) => {
    const found = new Map<Idea, number | null>();
    // Like is compared with like: the day as it is, with the same effort.
    const now = await endOf(open, station, signal);
    for (const idea of ideas) {
      const end = await endWith(idea, signal);
      found.set(idea, end === null ? null : now - end);
      setGains(new Map(found));
    }
  };
  const begin = () => {
    const own = new AbortController();
    leaving.current = own;
    setBusy(true);
    void tryAll(own.signal)
      .catch((error) => sayFailed('schedule', error))
      .finally(() => setBusy(false));
  };
  return (
    <section aria-labelledby="what-if-title">
      <h2 id="what-if-title">{words.whatIf}</h2>
      <p className="quiet small">{words.whatIfHint}</p>
      <ul className="what-if">
        {ideas.map((idea) => {
          const gain = gains?.get(idea);
          return (
            <li key={idea}>
              {words.whatIfs[idea]}
              {gain !== undefined && (
                <b>
                  {gain === null
                    ? words.notPossible
                    : gain >= 30
                      ? words.gains(spoken(Math.max(60, gain), ways))
                      : words.noGain}
                </b>
              )}
            </li>
          );
        })}
      </ul>
      <Button isDisabled={busy} onPress={begin}>
        {words.tryThem}
      </Button>
    </section>
  );
}

/** The run cut into shorter spans where it lies; `null` if no knife lines part it so. */
function shorter(run: LaidRun): LaidRun | null {
  const longest = Math.max(0, ...(run.spans ?? []).map(({ from, to }) => to - from));
  const cut = longest > 0 ? withSpans(run, um(longest * SHORTER)) : null;
  return cut?.spans ? cut : null;
}
