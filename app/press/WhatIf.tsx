import { useEffect, useRef, useState } from 'react';
import { type LaidRun, withSpans } from '../../src/layout';
import type { Station } from '../../src/model';
import { findMakespan } from '../../src/pressing/browser';
import { um } from '../../src/units';
import { Button } from '../parts/Button';
import { sayFailed } from '../store/failures';
import { stationOf, useWays } from '../store/selectors';
import { type Day, workWith } from '../store/timeline';
import { useAllWords, type Words } from '../words';
import { spoken } from '../words/format';

type Idea = keyof Words['press']['whatIfs'];

const ITERATIONS = 500;
const SEED = 1;
/** How long spans would be, were they shorter. */
const SHORTER = 2 / 3;

/** The equipment with one thing more. */
const more: Readonly<Record<Exclude<Idea, 'spans'>, (station: Station) => Station>> = {
  oven: (station) => ({ ...station, curer: 'oven' }),
  press: (station) => ({ ...station, press: { ...station.press, count: station.press.count + 1 } }),
  hands: (station) => ({ ...station, hands: station.hands + 1 }),
};

/** What one more of something, or shorter spans, would gain; worked out when asked for. */
export function WhatIf({ run, day }: { run: LaidRun; day: Day }) {
  const { press: words } = useAllWords();
  const ways = useWays();
  const station = stationOf(run);
  const [gains, setGains] = useState<ReadonlyMap<Idea, number | null> | null>(null);
  const [busy, setBusy] = useState(false);
  const leaving = useRef<AbortController | null>(null);
  useEffect(() => () => leaving.current?.abort(), []);
  const ideas: Idea[] = [...(station.curer === 'press' ? ['oven' as const] : []), 'press', 'hands', 'spans'];

  const endOf = async (laid: LaidRun | null, own: Station, signal: AbortSignal): Promise<number | null> => {
    const work = laid && workWith(laid, own, day.origin);
    if (!work?.ok) return null;
    return findMakespan(work.value.problem, { seed: SEED, iterations: ITERATIONS, signal });
  };
  const tryAll = async (signal: AbortSignal) => {
    const found = new Map<Idea, number | null>();
    // Like is compared with like: the day as it is, from its start, with the same effort.
    const now = await endOf(run, station, signal);
    for (const idea of ideas) {
      const end =
        idea === 'spans'
          ? await endOf(shorter(run), station, signal)
          : await endOf(run, more[idea](station), signal);
      found.set(idea, end === null || now === null ? null : now - end);
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
