import { uprightSize } from '../cutting';
import type { LaidCopy } from '../layout';
import {
  type Book,
  type Garment,
  type GarmentPlace,
  groupOfSize,
  type Placement,
  type SizeGroup,
  type Station,
} from '../model';
import { fromInches, fromMm, type Micrometres, um } from '../units';
import { fitsOn } from './loads';

/** What is pressed on a garment at once: one copy, or several on one side of it. */
export interface PlatenClosing {
  readonly copies: readonly [LaidCopy, ...LaidCopy[]];
  /** The garment's first: it is pre-pressed here. */
  readonly isFirst: boolean;
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

/** Whether prints on one side of a garment lie on the platen together. One that would overlap another above it lies below that. */
function fitTogether(
  prints: readonly Placed[],
  group: SizeGroup,
  platen: Station['press']['platen'],
): boolean {
  const boxes: Box[] = [];
  const byTop = prints.map((print) => boxOf(print, SCALE[group])).sort((a, b) => a.top - b.top);
  for (const box of byTop) {
    const above = boxes.filter((other) => overlap(other, box));
    const top = Math.max(box.top, ...above.map(({ bottom }) => bottom + APART));
    boxes.push({ ...box, top, bottom: box.bottom + top - box.top });
  }
  const width = Math.max(...boxes.map(({ right }) => right)) - Math.min(...boxes.map(({ left }) => left));
  const length = Math.max(...boxes.map(({ bottom }) => bottom)) - Math.min(...boxes.map(({ top }) => top));
  return fitsOn({ width: um(width), length: um(length) }, platen);
}

/** The prints of one garment parted into closings: what lies on one side of its body and on the platen together is pressed at once. */
function parted(prints: readonly Placed[], group: SizeGroup, { press, oneClosing }: Station): Placed[][] {
  const closings: Placed[][] = [];
  for (const print of prints) {
    const side = SIDES[print.on];
    const joined = closings.find(
      (closing) =>
        oneClosing &&
        side !== null &&
        SIDES[closing[0]?.on ?? 'other'] === side &&
        fitTogether([...closing, print], group, press.platen),
    );
    if (joined) joined.push(print);
    else closings.push([print]);
  }
  return closings;
}

/** The records that tell which copies go on one garment. */
export type GarmentSource = Pick<Book, 'transfer' | 'garment' | 'placement'>;

/** How far along the film the last of some prints lies: none of them is there to be pressed before it. */
const reach = (prints: readonly Placed[]): number => Math.max(...prints.map(({ copy }) => copy.y));

const closingsOfOne = (prints: readonly Placed[], group: SizeGroup, station: Station): PlatenClosing[] =>
  parted(prints, group, station)
    .sort((a, b) => reach(a) - reach(b))
    .flatMap((closing, index): PlatenClosing[] => {
      const [first, ...others] = closing.map(({ copy }) => copy);
      return first ? [{ copies: [first, ...others], isFirst: index === 0 }] : [];
    });

/** Copies of one transfer, in the order in which they lie on the film. */
function queues(copies: readonly LaidCopy[]): Map<string, LaidCopy[]> {
  const byTransfer = new Map<string, LaidCopy[]>();
  for (const copy of copies) {
    const queue = byTransfer.get(copy.transfer.id);
    if (queue) queue.push(copy);
    else byTransfer.set(copy.transfer.id, [copy]);
  }
  return byTransfer;
}

/** The group and the places of every garment of an order, one by one. */
function* garmentsOf(
  { garment, placement }: GarmentSource,
  order: string,
): Generator<{ group: SizeGroup; places: readonly { place: Placement; width: Micrometres }[] }> {
  const places = Object.values(placement).filter((own) => own.order === order);
  const garments: readonly Garment[] = Object.values(garment).filter((own) => own.order === order);
  for (const { size, count } of garments) {
    const group = groupOfSize(size);
    const own = places.map((place) => ({ place, width: place.widths[group].width }));
    for (let one = 0; one < count; one += 1) yield { group, places: own };
  }
}

/**
 * What is pressed, closing by closing. Copies that an order's garments and places call for are put together garment by garment, as
 * far as they are on this run; every other copy is a closing of its own.
 * @param copies all that are pressed, along the film
 */
export function platenClosings(
  source: GarmentSource,
  copies: readonly LaidCopy[],
  station: Station,
): PlatenClosing[] {
  const left = queues(copies);
  const transfers = Object.values(source.transfer);
  const closings: PlatenClosing[] = [];
  for (const order of new Set(copies.map((copy) => copy.order.id))) {
    for (const { group, places } of garmentsOf(source, order)) {
      const prints = places.flatMap(({ place, width }): Placed[] => {
        const transfer = transfers.find(({ grid }) => grid?.placement === place.id && grid.width === width);
        const copy = transfer && left.get(transfer.id)?.shift();
        return copy ? [{ copy, on: place.on }] : [];
      });
      closings.push(...closingsOfOne(prints, group, station));
    }
  }
  for (const queue of left.values()) {
    closings.push(...queue.map((copy): PlatenClosing => ({ copies: [copy], isFirst: true })));
  }
  return closings;
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
