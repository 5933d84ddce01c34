import { isObject, type Migration } from './stored';

const renamed = (value: unknown, names: Readonly<Record<string, string>>): unknown =>
  isObject(value)
    ? Object.fromEntries(Object.entries(value).map(([name, own]) => [names[name] ?? name, own]))
    : value;

/** What a field holds, put in its place made anew; a record without the field stays without it. */
const within = (value: unknown, name: string, made: (field: unknown) => unknown): unknown =>
  isObject(value) && name in value ? { ...value, [name]: made(value[name]) } : value;

function named(collection: string, value: unknown): unknown {
  switch (collection) {
    case 'closing':
      return within(value, 'work', (work) =>
        renamed(work, { garments: 'pressed', closings: 'platenClosings' }),
      );
    case 'calibration':
      return within(value, 'driver', (driver) => (driver === 'garment' ? 'pressed' : driver));
    case 'run':
      return within(value, 'basis', (basis) =>
        within(basis, 'use', (use) => renamed(use, { bench: 'machines' })),
      );
    default:
      return value;
  }
}

/**
 * Version 20 calls copies that are pressed so, where they were called garments, and the time of machines by its name. Undo stays, since
 * no step is of a closed run, of a locked one or of a calibration.
 */
export const nameWhatIsCounted: Migration = (records) =>
  new Map([...records].map(([key, value]) => [key, named(key.slice(0, key.indexOf('/')), value)]));
