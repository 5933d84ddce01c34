import type { Station } from '../../src/model';
import { type Machine, type MachineKind, ovenKind } from '../../src/pressing';
import { allWordsNow, type Words } from '../words';

type Told = Pick<Machine, 'kind' | 'name' | 'number'>;

/** What a machine is called: as the shop has named it, or by its number. */
export const machineNameIn = (
  { numbered }: Pick<Words['station'], 'numbered'>,
  { kind, name, number }: Told,
): string => name || numbered[kind](number);

/** What a machine is called in the language of now. */
export const machineName = (machine: Told): string => machineNameIn(allWordsNow().station, machine);

/** The lists of a station, and what each is of. */
export const machineLists = (
  station: Station,
): readonly { readonly key: 'printers' | 'presses' | 'ovens' | 'people'; readonly kind: MachineKind }[] => [
  { key: 'printers', kind: 'printer' },
  { key: 'presses', kind: 'press' },
  { key: 'ovens', kind: ovenKind(station) },
  { key: 'people', kind: 'person' },
];

/** The shop's printers to choose from. */
export const printerChoices = ({ printers }: Pick<Station, 'printers'>) =>
  printers.map(({ id, name }, at) => ({
    value: id,
    label: machineName({ kind: 'printer', name: name.trim(), number: at + 1 }),
  }));
