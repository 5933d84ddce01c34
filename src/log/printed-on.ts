import { type Book, type Printer, printerOf, type Settings, type Tick } from '../model';
import { isPrintKey, ticked, tickedOn } from '../pressing';
import { groupBy } from '../units';

/**
 * Finds the printers that runs were printed on: what their ticks say, else the one that the film of the run was in when it was locked.
 * @returns the ids of a run's printers, each once; more than one where it was printed on several
 */
export function printedOn(
  { run: runs, tick }: Pick<Book, 'run' | 'tick'>,
  station: Settings['station'],
): (run: string) => readonly Printer['id'][] {
  const ofRun: ReadonlyMap<string, readonly Tick[]> = groupBy(
    Object.values(tick),
    (own) => own.run as string,
  );
  return (id) => {
    const run = runs[id];
    const film = run === undefined || run.state === 'draft' ? undefined : run.snapshot.film;
    const planned = printerOf(station, film).id;
    const ticks = ofRun.get(id) ?? [];
    const on = tickedOn(ticks);
    const said = [...ticked(ticks).keys()].filter(isPrintKey).map((subject) => {
      const told = station.printers.find((printer) => printer.id === on.get(subject));
      return told?.id ?? planned;
    });
    return [...new Set(said.length > 0 ? said : [planned])];
  };
}
