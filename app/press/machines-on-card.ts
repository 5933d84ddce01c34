import type { LaidRun } from '../../src/layout';
import { actsOn, type Machine, numbered, ovenKind } from '../../src/pressing';
import { machineName } from '../panels/machine-name';
import { printerOfRun, stationOf } from '../store/selectors';
import type { Words } from '../words';
import { area, listed, type Ways } from '../words/format';

/** What is done at some machines, and which they are. */
interface OnMachines {
  readonly does: string;
  readonly names: string;
}

/** Where a run is printed, cured and pressed, by name and with what lies on them, as far as there are several machines of a kind. */
export function machinesOnCard(run: LaidRun, { press, station: words }: Words, ways: Ways): OnMachines[] {
  const station = stationOf(run);
  const { printers, presses, ovens, curer } = station;
  const acts = new Set(actsOn(run, station));
  const does = (of: readonly (keyof typeof press.acts)[]) =>
    of
      .filter((act) => acts.has(act))
      .map((act) => press.acts[act])
      .join(', ');
  const told = (
    of: readonly (keyof typeof press.acts)[],
    machines: readonly Machine[],
    bedOf: (id: string) => string,
  ) =>
    machines.length > 1 && does(of) !== ''
      ? [
          {
            does: does(of),
            names: listed(
              machines.map((machine) => `${machineName(machine)}${bedOf(machine.id)}`),
              ways,
            ),
          },
        ]
      : [];
  const own = printerOfRun(run).id;
  const isOwn = ({ id }: { readonly id: string }) => id === own;
  const platenOf = (id: string) => {
    const found = presses.find((each) => each.id === id);
    if (!found) return '';
    const size = area(found.platen.width, found.platen.length, ways);
    return ` (${[size, ...(found.caps ? [words.capsToo] : [])].join(', ')})`;
  };
  const bedOf = (id: string) => {
    const found = ovens.find((each) => each.id === id);
    return found ? ` (${area(found.bed.width, found.bed.length, ways)})` : '';
  };
  const [printer] = numbered('printer', printers).filter(isOwn);
  return [
    ...(printers.length > 1 && printer ? [{ does: press.acts.print, names: machineName(printer) }] : []),
    ...(curer === 'press'
      ? told(['cure-press', 'press', 'again'], numbered('press', presses), platenOf)
      : [
          ...told(['cure-oven', 'line'], numbered(ovenKind(station), ovens), bedOf),
          ...told(['press', 'again'], numbered('press', presses), platenOf),
        ]),
  ];
}
