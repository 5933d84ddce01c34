import type { Station } from '../../src/model';
import { type Entry, type Machine, numbered } from '../../src/pressing';
import { machineLists, machineName } from '../panels/machine-name';
import { Select } from '../parts/Select';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { machinesOf } from './day-rows';
import { jobName } from './job-name';

/** The machine that the plan has a job on, where there are several of its kind. */
export const plannedOn = (entry: Pick<Entry, 'takes'>): Machine | null =>
  machinesOf(entry).find(({ kind }) => kind !== 'person') ?? null;

/** All machines of a kind that the shop has. */
const machinesLike = (kind: Machine['kind'], station: Station): readonly Machine[] =>
  machineLists(station).flatMap((list) => (list.kind === kind ? numbered(kind, station[list.key]) : []));

/** On which of several machines a job is done: as planned, until someone says otherwise. */
export function DoneOn({
  entry,
  planned,
  station,
  value,
  onChange,
}: {
  entry: Pick<Entry, 'job'>;
  planned: Machine;
  station: Station;
  value: string;
  onChange: (machine: string) => void;
}) {
  const { press: words } = useAllWords();
  const ways = useWays();
  return (
    <Select
      writes
      className="control done-on"
      aria-label={words.doneOn(jobName(entry.job, ways))}
      value={value}
      options={machinesLike(planned.kind, station).map((machine) => ({
        value: machine.id,
        label: machineName(machine),
      }))}
      onChange={onChange}
    />
  );
}
