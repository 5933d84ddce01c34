import type { ReactNode } from 'react';
import type { LaidRun } from '../../src/layout';
import { actOf, cureRecipe, isDusty, type Job, type Machine, pressRecipe } from '../../src/pressing';
import { Cautions } from '../panels/Cautions';
import { machineName } from '../panels/machine-name';
import { Button } from '../parts/Button';
import { stationOf, useWays } from '../store/selectors';
import { useAllWords, type Words } from '../words';
import { bothDegrees, rulerLength, spoken, type Ways } from '../words/format';
import { jobName } from './job-name';

/** How a job is heated, in a line; `null` where nothing is. */
function recipeOf({ kind, fabric }: Job, run: LaidRun, words: Words['press'], ways: Ways): string | null {
  const { temperature: unit, curer } = stationOf(run);
  if ((kind === 'press' || kind === 'again') && fabric !== null) {
    const { values } = pressRecipe(run.view, run.film.peel, fabric);
    const line = words.line(values, bothDegrees(values.temperature, unit, ways.locale), ways);
    return `${line}, ${words.peelAfter(run.film.peel, values.wait, ways)}`;
  }
  if (kind !== 'cure' && kind !== 'line') return null;
  const { temperature, seconds, clear } = cureRecipe(run.view, curer).values;
  return words.cureLine(
    bothDegrees(temperature, unit, ways.locale),
    spoken(seconds, ways),
    clear > 0 ? rulerLength(clear, ways) : null,
  );
}

/** On a phone, held at the bench: what to do next, how, what to mind, and one large button. */
export function NextCard({
  job,
  machines,
  where,
  run,
  isBegun,
  onDone,
  onBegin,
}: {
  job: Job;
  /** Where it is done, as far as there are several of a kind. */
  machines: readonly Machine[];
  /** What says on which of several machines it is done; `null` where none need be said. */
  where: ReactNode;
  run: LaidRun;
  isBegun: boolean;
  onDone: () => void;
  /** `null` for a run that is a draft. */
  onBegin: (() => void) | null;
}) {
  const { press: words } = useAllWords();
  const ways = useWays();
  const recipe = recipeOf(job, run, words, ways);
  const act = actOf(job.kind, stationOf(run).curer);
  return (
    <section className="next-card" aria-label={words.doNow}>
      <p className="quiet small">{[run.name, ...machines.map(machineName)].join(' · ')}</p>
      <p className="sentence">{jobName(job, ways)}</p>
      {where}
      {recipe !== null && (
        <p>
          <b>{recipe}</b>
        </p>
      )}
      {act && <Cautions cautions={[words.cautions[act]]} dusty={isDusty(act)} />}
      {isBegun ? (
        <Button writes weight="primary" onPress={onDone}>
          {words.done}
        </Button>
      ) : onBegin ? (
        <Button writes weight="primary" onPress={onBegin}>
          {words.start}
        </Button>
      ) : (
        <p>{words.lockFirst}</p>
      )}
    </section>
  );
}
