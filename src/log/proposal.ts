import { type Consumption, type CoverageOf, runConsumption } from '../costing';
import { runSpans } from '../cutting';
import { copyArea, type LaidRun, layRun, runFigures } from '../layout';
import { type Book, type Closing, fabricOn, type Run, type Settings, type Spoilage } from '../model';
import { pressedOn, pressRecipe, ticked, type Work, workOf } from '../pressing';
import { boxOf, inUse, takenByRun } from '../stock';
import { asSeconds, type LocalDate, um } from '../units';
import { airOf } from '../upkeep';
import { runCoverage } from './run-coverage';
import { plannedTime, tickedTime } from './work-time';

/** How often the press closes: on each copy, before it and after it as its recipe says, and for curing, where it cures. */
function platenClosingsCount(
  { view, copies, film }: LaidRun,
  work: Work | null,
  { curer }: Settings['station'],
): number {
  const presses = copies.filter(pressedOn(view)).reduce((sum, { id, transfer }) => {
    const { values } = pressRecipe(view, film.peel, fabricOn(view, { id, transfer: transfer.id }));
    return sum + 1 + Number(values.prePress > 0) + Number(values.secondPress > 0);
  }, 0);
  const cures = curer === 'press' ? (work?.jobs.filter(({ kind }) => kind === 'cure').length ?? 0) : 0;
  return presses + cures;
}

/** Spoiled copies by stage and reason; those on spoiled film have no reason of their own. */
function spoiledOf(book: Pick<Book, 'spoilage'>, run: Run): Closing['spoiled'] {
  const groups = new Map<string, Closing['spoiled'][number]>();
  const add = ({ stage, reason }: Pick<Spoilage, 'stage' | 'reason'>, copies: number, garments: number) => {
    const key = `${stage} ${reason}`;
    const known = groups.get(key);
    groups.set(key, {
      stage,
      reason,
      copies: copies + (known?.copies ?? 0),
      garments: garments + (known?.garments ?? 0),
    });
  };
  for (const { copies } of run.spoiled)
    if (copies.length > 0) add({ stage: 'print', reason: '' }, copies.length, 0);
  for (const each of Object.values(book.spoilage)) {
    if (each.run === run.id) add(each, 1, Number(each.garment));
  }
  return [...groups.values()];
}

/** What is written on the boxes that a run draws on; several of a kind one behind the other. */
function lotsOf(book: Book, film: string): Closing['lots'] {
  const lots = (kind: 'colour' | 'white' | 'powder') =>
    inUse(book, kind)
      .map(({ lot }) => lot)
      .filter((lot) => lot !== '')
      .join(', ');
  return {
    film: boxOf(book, film)?.lot ?? '',
    colour: lots('colour'),
    white: lots('white'),
    powder: lots('powder'),
  };
}

/** What is weighed out for a run and not returned is what it used; else what the rates tell of its coverage. */
function usedPowder(book: Book, run: string, byRates: Consumption | null): Closing['actual']['powder'] {
  const ids = Object.values(book.item).flatMap(({ id, kind }) => (kind === 'powder' ? [id] : []));
  const weighed = takenByRun(book, run, ids);
  return weighed > 0 ? (weighed as Closing['actual']['powder']) : (byRates?.powder ?? null);
}

/** What a run that is about to be closed is proposed to be closed with. */
export type ProposedClosing = Omit<Closing, 'changed' | 'earlier'>;

/** Ticks made late or all at once tell no time: what is so far from the plan is not taken for measured (a judgement, no source). */
const PLAUSIBLE = 3;

type Times = Closing['actual']['time'];

/** What ticks tell of each worker’s time, where it may be true; `null` where it is not. */
export function plausibleTime(told: Times, planned: Closing['planned']['time']): Times {
  const mayBe = (worker: keyof Times) => {
    const time = told[worker];
    if (time === null) return null;
    return time * PLAUSIBLE >= planned[worker] && time <= planned[worker] * PLAUSIBLE ? time : null;
  };
  return { printer: mayBe('printer'), hands: mayBe('hands'), press: mayBe('press'), oven: mayBe('oven') };
}

/**
 * The record of a run that is about to be closed: what was planned, and as what was used the same until someone corrects it. Ink and
 * powder are by the shop's rates; where some artwork was never looked at they are not known, and are left open. Of a run that was
 * closed before and opened again, what was told of it then stands.
 * @param coverageOf see {@link CoverageOf}
 * @param now when it is closed
 * @param day the calendar day of it, where the shop is
 * @returns `null` if there is no such run, or it has no film
 */
export function proposeClosing(
  book: Book,
  id: string,
  settings: Pick<Settings, 'rates' | 'costs' | 'station'>,
  coverageOf: CoverageOf,
  { now, day }: { readonly now: Closing['at']; readonly day: LocalDate },
): ProposedClosing | null {
  const run = book.run[id];
  const laid = run && layRun(book, run);
  if (!laid) return null;
  const told = book.reopened[id];
  const { film, view } = laid;
  const figures = runFigures(laid);
  const made = workOf(laid, settings.station, new Date(now));
  const work = made.ok ? made.value : null;
  const done = ticked(Object.values(book.tick).filter((tick) => tick.run === run.id));
  const nothing = asSeconds(0);
  const time = work ? plannedTime(work) : { printer: nothing, hands: nothing, press: nothing, oven: nothing };
  const coverage = runCoverage(laid, coverageOf);
  const byRates = coverage && runConsumption(coverage, settings);
  const length = film.kind === 'roll' ? figures.length : laid.lengthUsed;
  const amounts = { film: um(length), sheets: figures.sheets };
  const inks = {
    colour: byRates?.colour ?? null,
    white: byRates?.white ?? null,
  };
  return {
    id: run.id,
    name: run.name,
    at: now,
    day,
    film: { id: film.id, name: film.name, kind: film.kind, width: film.width },
    work: {
      copies: laid.copies.length,
      pressed: laid.copies.filter(pressedOn(view)).length,
      spans: runSpans(laid).length,
      platenClosings: platenClosingsCount(laid, work, settings.station),
      copyArea: copyArea(laid) / 1e6,
      coverage,
    },
    planned: {
      ...amounts,
      ...inks,
      powder: byRates?.powder ?? null,
      time,
    },
    actual: told?.actual ?? {
      ...amounts,
      ...inks,
      powder: usedPowder(book, run.id, byRates),
      time: work
        ? plausibleTime(tickedTime(work, done, settings.station.people.length), time)
        : { printer: null, hands: null, press: null, oven: null },
    },
    spoiled: spoiledOf(book, run),
    lots: told?.lots ?? lotsOf(book, film.id),
    air: told?.air ?? airOf(Object.values(book.reading), day),
    notes: told?.notes ?? '',
  };
}
