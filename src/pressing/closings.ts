import { uprightSize } from '../cutting';
import type { LaidCopy } from '../layout';
import {
  fabricOn,
  type GarmentPlace,
  garmentsByOrder,
  groupOf,
  type RunView,
  type SizeGroup,
  type Station,
} from '../model';
import { type Fabric, fromInches, fromMm, groupBy, type Micrometres, um } from '../units';
import { fitsOn, type Sized } from './loads';

/** What is pressed on a garment at once: one copy, or several on one side of it. */
export interface PlatenClosing {
  readonly copies: readonly [LaidCopy, ...LaidCopy[]];
  /** The garment's first: it is pre-pressed here. */
  readonly isFirst: boolean;
  /** What the garment is made of; `null` while nobody has told. */
  readonly fabric: Fabric | null;
  /** What they take of a platen together. */
  readonly takes: Sized;
}

/** The side of a garment's body that each place lies on; what lies on none, or nobody knows where, is pressed by itself. */
const SIDES: Readonly<Record<GarmentPlace, 'front' | 'back' | null>> = {
  front: 'front',
  chest: 'front',
  'left-chest': 'front',
  'right-chest': 'front',
  back: 'back',
  'off-body': null,
  other: null,
};

/**
 * Where prints lie on an adult's garment, from the shoulder seam at the collar: the middle of one on the chest, and the top of any
 * other, whose middle is the garment's (common practice, no source).
 */
const CHEST_BELOW = fromInches(8);
const CHEST_ASIDE: Partial<Record<GarmentPlace, Micrometres>> = {
  'left-chest': fromInches(5),
  chest: um(0),
  'right-chest': um(-fromInches(5)),
};
const TOP = fromInches(6.5);
/** Smaller garments have it all nearer together (common practice, no source). */
const SCALE: Readonly<Record<SizeGroup, number>> = { adult: 1, youth: 0.8, toddler: 0.65 };
/** Two prints on one garment lie so far apart at the least. */
const APART = fromMm(10);

interface Placed {
  readonly copy: LaidCopy;
  readonly on: GarmentPlace;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function boxOf({ copy, on }: Placed, scale: number): Box {
  const { width, height } = uprightSize(copy);
  const aside = CHEST_ASIDE[on];
  const x = (aside ?? 0) * scale;
  const top = aside === undefined ? TOP * scale : CHEST_BELOW * scale - height / 2;
  return { left: x - width / 2, right: x + width / 2, top, bottom: top + height };
}

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** What prints on one side of a garment take of a platen together. One that would overlap another above it lies below that. */
function boxAround(prints: readonly Placed[], group: SizeGroup): Sized {
  const boxes: Box[] = [];
  const byTop = prints.map((print) => boxOf(print, SCALE[group])).sort((a, b) => a.top - b.top);
  for (const box of byTop) {
    const above = boxes.filter((other) => overlap(other, box));
    const top = Math.max(box.top, ...above.map(({ bottom }) => bottom + APART));
    boxes.push({ ...box, top, bottom: box.bottom + top - box.top });
  }
  const width = Math.max(...boxes.map(({ right }) => right)) - Math.min(...boxes.map(({ left }) => left));
  const length = Math.max(...boxes.map(({ bottom }) => bottom)) - Math.min(...boxes.map(({ top }) => top));
  return { width: um(width), length: um(length) };
}

/** The prints of one garment parted into closings: what lies on one side of its body and on a platen together is pressed at once. */
function parted(prints: readonly Placed[], group: SizeGroup, { presses, oneClosing }: Station): Placed[][] {
  const closings: Placed[][] = [];
  for (const print of prints) {
    const side = SIDES[print.on];
    const joined = closings.find((closing) => {
      if (!oneClosing || side === null || SIDES[closing[0]?.on ?? 'other'] !== side) return false;
      const box = boxAround([...closing, print], group);
      return presses.some(({ platen }) => fitsOn(box, platen));
    });
    if (joined) joined.push(print);
    else closings.push([print]);
  }
  return closings;
}

/** How far along the film the last of some prints lies: none of them is there to be pressed before it. */
const reach = (prints: readonly Placed[]): number => Math.max(...prints.map(({ copy }) => copy.y));

const closingsOfOne = (
  prints: readonly Placed[],
  group: SizeGroup,
  fabric: PlatenClosing['fabric'],
  station: Station,
): PlatenClosing[] =>
  parted(prints, group, station)
    .sort((a, b) => reach(a) - reach(b))
    .flatMap((closing, index): PlatenClosing[] => {
      const [first, ...others] = closing.map(({ copy }) => copy);
      const takes = boxAround(closing, group);
      return first ? [{ copies: [first, ...others], isFirst: index === 0, fabric, takes }] : [];
    });

/** The prints of the garments of one line, garment by garment: of each place the copies in their order along the film. */
function garmentsOf({ transfer, placement }: RunView, copies: readonly LaidCopy[]): Placed[][] {
  const byPlace = groupBy(copies, (copy): string => {
    const place = transfer[copy.transfer.id]?.grid?.placement ?? '';
    return placement[place] ? place : '';
  });
  const places = [...Object.values(placement), undefined].flatMap((place) =>
    (byPlace.get(place?.id ?? '') ?? []).length === 0 ? [] : [place],
  );
  const garments = Math.max(0, ...[...byPlace.values()].map(({ length }) => length));
  return Array.from({ length: garments }, (_, at) =>
    places.flatMap((place): Placed[] => {
      const copy = byPlace.get(place?.id ?? '')?.[at];
      return copy ? [{ copy, on: place?.on ?? 'other' }] : [];
    }),
  );
}

/**
 * How many garments of each line get a print from some copies of a run; of a line that no transfer calls for, those that the run takes.
 * @param copies along the film
 */
export function garmentsPressed(view: RunView, copies: readonly LaidCopy[]): ReadonlyMap<string, number> {
  const { onto, takes } = view.dealt();
  const orders = new Set<string>(copies.map(({ order }) => order.id));
  const byLine = groupBy(copies, ({ id }) => onto.get(id));
  const used = new Set<string>(onto.values());
  return new Map(
    Object.values(view.garment).flatMap(({ id, order }) => {
      const own = byLine.get(id);
      const count = own ? garmentsOf(view, own).length : used.has(id) ? 0 : (takes.get(id) ?? 0);
      return orders.has(order) && count > 0 ? [[id as string, count] as const] : [];
    }),
  );
}

/**
 * What is pressed, closing by closing. Copies that go on the garments of a line are put together garment by garment, as far as they are
 * on this run; every other copy is a closing of its own.
 * @param copies all that are pressed, along the film
 */
export function platenClosings(
  view: RunView,
  copies: readonly LaidCopy[],
  station: Station,
): PlatenClosing[] {
  const { onto } = view.dealt();
  const lines = garmentsByOrder(view);
  const byLine = groupBy(copies, ({ id }) => onto.get(id));
  const closings = [...new Set(copies.map(({ order }) => order.id))].flatMap((order) =>
    (lines.get(order) ?? []).flatMap((line) =>
      garmentsOf(view, byLine.get(line.id) ?? []).flatMap((prints) =>
        closingsOfOne(prints, groupOf(line), line.fabric, station),
      ),
    ),
  );
  const others = copies.filter(({ id }) => !view.garment[onto.get(id) ?? '']);
  return [
    ...closings,
    ...others.map((copy): PlatenClosing => {
      const fabric = fabricOn(view, { id: copy.id, transfer: copy.transfer.id });
      const { width, height } = uprightSize(copy);
      return { copies: [copy], isFirst: true, fabric, takes: { width, length: height } };
    }),
  ];
}

/** Transfers that are pressed in one closing, and on how many garments. */
export function pressedTogether(
  closings: readonly PlatenClosing[],
): { readonly transfers: readonly LaidCopy['transfer'][]; readonly garments: number }[] {
  const groups = new Map<string, { transfers: readonly LaidCopy['transfer'][]; garments: number }>();
  for (const { copies } of closings) {
    if (copies.length < 2) continue;
    const transfers = copies.map(({ transfer }) => transfer);
    const key = transfers.map(({ id }) => id).join();
    const group = groups.get(key) ?? { transfers, garments: 0 };
    group.garments += 1;
    groups.set(key, group);
  }
  return [...groups.values()];
}
