import type { LaidCopy, LaidRun } from '../layout';
import { groupOf, type PlaceName, placeNamed, type RunView, type SizeGroup } from '../model';
import { pressedOn } from './pressed-on';

/** From the least to the most, in inches. */
export type Inches = readonly [least: number, most: number];

/** Where a print lies: so far along from where the place is measured from, and so far off the middle. */
export interface PlaceMeasure {
  readonly along: Inches;
  readonly aside: Inches | null;
}

const only = (along: Inches): PlaceMeasure => ({ along, aside: null });

const chest: Readonly<Record<SizeGroup, PlaceMeasure>> = {
  adult: { along: [7, 9], aside: [4, 6] },
  youth: { along: [5, 7], aside: [3, 4.5] },
  toddler: { along: [4, 5], aside: [2, 3] },
};

/** Where prints lie on garments of each group (common practice, no source); the words of the app say what each is measured from. */
export const measures: Readonly<Record<PlaceName, Readonly<Record<SizeGroup, PlaceMeasure>>>> = {
  'left chest': chest,
  'right chest': chest,
  front: { adult: only([3, 3]), youth: only([2, 2]), toddler: only([1, 1]) },
  back: { adult: only([4, 4]), youth: only([3, 3]), toddler: only([2, 2]) },
  sleeve: { adult: only([1, 2]), youth: only([1, 1.5]), toddler: only([0.5, 1]) },
  'neck tag': { adult: only([1, 1]), youth: only([0.75, 0.75]), toddler: only([0.5, 0.5]) },
  pocket: { adult: only([0.5, 1]), youth: only([0.5, 0.75]), toddler: only([0.5, 0.5]) },
  hood: { adult: only([2, 3]), youth: only([1.5, 2.5]), toddler: only([1, 2]) },
  leg: { adult: only([6, 8]), youth: only([4, 6]), toddler: only([3, 4]) },
  cap: { adult: only([0.5, 0.75]), youth: only([0.5, 0.5]), toddler: only([0.5, 0.5]) },
  tote: { adult: only([3, 4]), youth: only([3, 4]), toddler: only([3, 4]) },
};

/** A known place that is pressed on a run, and the group of garments that it is pressed on. */
export interface PressedPlace {
  readonly place: PlaceName;
  readonly group: SizeGroup;
}

/** The place that a transfer is pressed at: that of the grid it comes from, or the one its name tells. */
function placeOf(view: RunView, { id, name }: LaidCopy['transfer']): PlaceName | null {
  const placement = view.placement[view.transfer[id]?.grid?.placement ?? ''];
  return placeNamed(placement?.place ?? name);
}

/** Whether a copy goes on a cap: its place says so, or the garment it is dealt to. */
export const isOnCap = (view: RunView, { id, transfer }: LaidCopy): boolean =>
  placeOf(view, transfer) === 'cap' ||
  placeNamed(view.garment[view.dealt().onto.get(id) ?? '']?.style ?? '') === 'cap';

/**
 * The places that a run is pressed at, each with the groups of garments that get a print there and no other. A transfer that was listed
 * by hand tells both by its name, and is an adult's where it says nothing else.
 */
export function placesPressed({ view, copies }: Pick<LaidRun, 'view' | 'copies'>): PressedPlace[] {
  const { onto } = view.dealt();
  const found = new Map<string, PressedPlace>();
  for (const { id, transfer } of copies.filter(pressedOn(view))) {
    const line = view.garment[onto.get(id) ?? ''];
    const place = placeOf(view, transfer);
    const group = groupOf(line ?? { style: transfer.name, size: '' });
    if (place) found.set(`${place} ${group}`, { place, group });
  }
  return [...found.values()];
}
