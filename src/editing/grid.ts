import {
  type Garment,
  garmentPlaceOf,
  groupOf,
  type Id,
  type Placement,
  sizeGroups,
  type Transfer,
  widestFor,
  widthFor,
} from '../model';
import { groupBy, type Micrometres, um, writtenLength } from '../units';
import type { BookDraft, EditContext } from './step';
import { addTransfer, editTransfer, removeTransfer, setCount } from './transfers';

export type GarmentFields = Pick<Garment, 'style' | 'colour' | 'shade' | 'size' | 'count'> &
  Partial<Pick<Garment, 'fabric' | 'price'>>;
export type PlacementFields = Pick<Placement, 'place' | 'design' | 'ratio' | 'widths'> &
  Partial<Pick<Placement, 'sizes'>>;

export function addGarment(
  draft: BookDraft,
  order: Id<'order'>,
  fields: GarmentFields,
  context: EditContext,
): Id<'garment'> {
  const id = context.newId<'garment'>();
  draft.garment[id] = { id, order, fabric: null, price: null, ...fields, changed: context.now };
  followGrid(draft, order, context);
  return id;
}

export function editGarment(
  draft: BookDraft,
  id: string,
  fields: Partial<GarmentFields>,
  context: EditContext,
): void {
  const garment = draft.garment[id];
  if (!garment) return;
  Object.assign(garment, fields);
  followGrid(draft, garment.order, context);
}

/** Prices garments alike; `null` is the shop's own price. */
export function priceGarments(
  draft: BookDraft,
  ids: readonly string[],
  price: Garment['price'],
  context: EditContext,
): void {
  for (const id of ids) editGarment(draft, id, { price }, context);
}

export function removeGarment(draft: BookDraft, id: string, context: EditContext): void {
  const garment = draft.garment[id];
  if (!garment) return;
  delete draft.garment[id];
  followGrid(draft, garment.order, context);
}

export function addPlacement(
  draft: BookDraft,
  order: Id<'order'>,
  fields: PlacementFields,
  context: EditContext,
): Id<'placement'> {
  const id = context.newId<'placement'>();
  const on = garmentPlaceOf(fields.place);
  draft.placement[id] = { id, order, sizes: {}, ...fields, on, artwork: null, changed: context.now };
  followGrid(draft, order, context);
  return id;
}

export function editPlacement(
  draft: BookDraft,
  id: string,
  fields: Partial<PlacementFields>,
  context: EditContext,
): void {
  const placement = draft.placement[id];
  if (!placement) return;
  Object.assign(placement, fields);
  placement.on = garmentPlaceOf(placement.place);
  followGrid(draft, placement.order, context);
}

export function removePlacement(draft: BookDraft, id: string, context: EditContext): void {
  const placement = draft.placement[id];
  if (!placement) return;
  delete draft.placement[id];
  followGrid(draft, placement.order, context);
}

/** One printed size of a placement: the garments it serves. */
export interface PrintedSize {
  readonly width: Micrometres;
  readonly typed: string;
  readonly count: number;
  /** Garment sizes, in the order of the lines. */
  readonly sizes: readonly string[];
  /** Wider than the smallest of its garments takes, where the print lies on the body. */
  readonly tooWideFor: string | null;
}

/** A garment's size as it is named among others: with its style, where that tells that it is a child's. */
const nameOfSize = (garment: Garment): string =>
  groupOf({ style: '', size: garment.size }) === groupOf(garment)
    ? garment.size
    : `${garment.style} ${garment.size}`;

/** The sizes that a placement is printed at for some garments, those of the smallest groups last: what has one width shares a size. */
export function printedSizes(placement: Placement, garments: readonly Garment[]): PrintedSize[] {
  const own = sizeGroups.flatMap((group) =>
    garments.filter((garment) => garment.count > 0 && groupOf(garment) === group),
  );
  return [...groupBy(own, (garment): number => widthFor(placement, garment).width)].flatMap(([, alike]) => {
    const [first] = alike;
    if (!first) return [];
    const { width, typed } = widthFor(placement, first);
    const narrow =
      placement.on === 'off-body' ? undefined : alike.find((garment) => width > widestFor(garment));
    return [
      {
        width,
        typed,
        count: alike.reduce((sum, { count }) => sum + count, 0),
        sizes: [...new Set(alike.map(nameOfSize))],
        tooWideFor: narrow ? nameOfSize(narrow) : null,
      },
    ];
  });
}

/** Makes the transfers that an order's grid calls for, and their counts; one that it no longer calls for goes, unless it is in print. */
function followGrid(draft: BookDraft, order: Id<'order'>, context: EditContext): void {
  const unit = draft.settings.shop?.unit ?? 'mm';
  const garments = Object.values(draft.garment).filter((garment) => garment.order === order);
  const shades = new Set(garments.map(({ shade }) => shade));
  const [only = null] = shades.size === 1 ? shades : [];
  const own = Object.values(draft.transfer).filter(
    (transfer) => transfer.order === order && transfer.grid !== null,
  );
  const called = new Set<string>();
  for (const placement of Object.values(draft.placement)) {
    if (placement.order !== order) continue;
    const sizes = printedSizes(placement, garments);
    for (const { width, typed, count, sizes: served } of sizes) {
      const height = um(width * placement.ratio);
      const fields = {
        name: `${placement.design}, ${placement.place}${sizes.length > 1 ? ` ${served.join(' ')}` : ''}`,
        width,
        height,
        typed: { width: typed, height: writtenLength(height, unit) },
        shade: only,
        grid: { placement: placement.id, width },
      };
      const made = own.find(({ grid }) => grid?.placement === placement.id && grid.width === width);
      const id = made?.id ?? addTransfer(draft, order, { ...fields, turn: 'quarter' }, 0, context);
      if (made) editTransfer(draft, id, fields);
      const transfer = draft.transfer[id];
      if (transfer && placement.artwork) transfer.artwork = placement.artwork;
      setCount(draft, id, count, context);
      called.add(id);
    }
  }
  for (const transfer of own) if (!called.has(transfer.id)) removeTransfer(draft, transfer.id);
}

/** A shirt with a name or a number of its own. */
export interface NamedGarment {
  readonly name: string;
  readonly number: string;
  readonly size: string;
}

/** Adds one garment and one transfer for each name and number of a list. */
export function addNames(
  draft: BookDraft,
  order: Id<'order'>,
  names: readonly NamedGarment[],
  print: Pick<Transfer, 'width' | 'height' | 'typed'> & Pick<Garment, 'style' | 'fabric'>,
  context: EditContext,
): void {
  const { style, fabric, ...size } = print;
  for (const { name, number, size: garmentSize } of names) {
    const garment = context.newId<'garment'>();
    const fields = { style, colour: '', shade: null, size: garmentSize, fabric, count: 1, price: null };
    draft.garment[garment] = { id: garment, order, ...fields, changed: context.now };
    const title = [name, number, garmentSize && `(${garmentSize})`].filter(Boolean).join(' ');
    addTransfer(draft, order, { name: title, ...size, turn: 'quarter', garment }, 1, context);
  }
}
