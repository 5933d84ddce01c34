import { useState } from 'react';
import { type editGarment, edits, type PlacementFields, printedSizes } from '../../src/editing';
import {
  type Garment,
  garmentsByOrder,
  groupOf,
  type Id,
  type Order,
  type Placement,
  type PlaceName,
  placementsByOrder,
  type SizeGroup,
  sizeGroups,
  sizeKey,
  startingWidths,
  widthFor,
} from '../../src/model';
import { fromMm, keysOf, type Micrometres, toMm, um } from '../../src/units';
import { FabricCell } from '../panels/FabricChoice';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { EntryCell } from '../parts/fields/EntryCell';
import { shortLength } from '../parts/fields/lengths';
import { whole } from '../parts/fields/numbers';
import { text } from '../parts/fields/text';
import { useHeld } from '../parts/held';
import { useReader } from '../store/reader';
import { useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { CloseButton } from '../windows/CloseButton';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { typedLength, type Ways, whole as wholeText } from '../words/format';
import { name, type Sized, sizeAsTyped } from './entries';
import './orders.css';

/** A width to start with as the shop's tape has it: in a metric shop to 5 mm. */
const native = (width: Micrometres, { unit }: Ways): Micrometres =>
  unit === 'in' ? width : fromMm(5 * Math.round(toMm(width) / 5));

const MOST_GARMENTS = 9999;
const garmentCount = whole(0, MOST_GARMENTS, ({ orders }, ways) =>
  orders.countProblem(1, wholeText(MOST_GARMENTS, ways)),
);

const places = keysOf(startingWidths);

/** Garments by style, colour and size, crossed with the places that are printed; the transfers follow. */
export function GridDialog({ id }: { id: string }) {
  const { grid: words } = useAllWords();
  const book = useShop((shop) => shop.book);
  const order = book.order[id];
  if (!order) return null;
  const garments = garmentsByOrder(book).get(id) ?? [];
  const placements = placementsByOrder(book).get(id) ?? [];
  return (
    <Window title={words.title(order.name)}>
      <p className="quiet">{words.hint}</p>
      <Garments order={order} garments={garments} />
      <Placements order={order} placements={placements} garments={garments} />
      <div className="actions">
        <CloseButton />
      </div>
    </Window>
  );
}

function Garments({ order, garments }: { order: Order; garments: readonly Garment[] }) {
  const reader = useReader();
  const { isHeld, reason } = useHeld(true);
  const { grid: words, press } = reader.words;
  const last = garments.at(-1);
  return (
    <section>
      <h3>{words.garments}</h3>
      {garments.length > 0 && (
        <div className="grid-row grid-titles" aria-hidden="true">
          {[words.style, words.colour, words.shade, words.size, press.fabric, words.howMany, ''].map(
            (title) => (
              <span key={title}>{title}</span>
            ),
          )}
        </div>
      )}
      <ul className="grid-list">
        {garments.map((garment) => {
          const edit = (fields: Parameters<typeof editGarment>[2]) =>
            act(edits.editGarment(garment.id, fields));
          return (
            <li key={garment.id} className="grid-row">
              <EntryCell
                label={words.style}
                value={garment.style}
                codec={text}
                reader={reader}
                onEntry={(style) => edit({ style })}
              />
              <EntryCell
                label={words.colour}
                value={garment.colour}
                codec={text}
                reader={reader}
                onEntry={(colour) => edit({ colour })}
              />
              <input
                type="color"
                disabled={isHeld}
                {...reason}
                aria-label={words.shade}
                value={garment.shade ?? '#ffffff'}
                onChange={(event) => edit({ shade: event.target.value })}
              />
              <EntryCell
                label={words.size}
                value={garment.size}
                codec={name}
                reader={reader}
                onEntry={(size) => edit({ size })}
              />
              <FabricCell
                label={press.fabric}
                fabric={garment.fabric}
                onTell={(fabric) => edit({ fabric })}
              />
              <EntryCell
                label={words.howMany}
                value={garment.count}
                codec={garmentCount}
                reader={reader}
                onEntry={(value) => edit({ count: value })}
              />
              <Button
                writes
                weight="plain"
                aria-label={words.removeGarment}
                onPress={() => act(edits.removeGarment(garment.id))}
              >
                ✕
              </Button>
            </li>
          );
        })}
      </ul>
      <Button
        writes
        onPress={() =>
          act(
            edits.addGarment(order.id, {
              style: last?.style ?? words.aStyle,
              colour: last?.colour ?? '',
              shade: last?.shade ?? null,
              size: nextSize(last?.size),
              fabric: last?.fabric ?? null,
              count: 1,
            }),
          )
        }
      >
        {words.addGarment}
      </Button>
    </section>
  );
}

/** Sizes one after the other, of adults, youths and toddlers, and children's body heights (EN 13402-3, from memory). */
const SIZES: readonly (readonly string[])[] = [
  ['S', 'M', 'L', 'XL', '2XL', '3XL'],
  ['YXS', 'YS', 'YM', 'YL', 'YXL'],
  ['2T', '3T', '4T', '5T'],
  Array.from({ length: 19 }, (_, step) => String(56 + 6 * step)),
];

/** The size after a line's, since lines are typed by size; the same where none is known to follow. */
const nextSize = (size: string | undefined): string => {
  const own = SIZES.find((sizes) => sizes.includes(size ?? ''));
  return own?.[own.indexOf(size ?? '') + 1] ?? size ?? 'S';
};

function Placements({
  order,
  placements,
  garments,
}: {
  order: Order;
  placements: readonly Placement[];
  garments: readonly Garment[];
}) {
  const { grid: words } = useAllWords();
  const ways = useWays();
  const [place, setPlace] = useState<PlaceName>('front');
  const widthsOf = (name: PlaceName): PlacementFields['widths'] => {
    const width = (group: SizeGroup) => {
      const length = native(startingWidths[name][group], ways);
      return { width: length, typed: `${typedLength(length, ways)} ${ways.unit}` };
    };
    return { adult: width('adult'), youth: width('youth'), toddler: width('toddler') };
  };
  return (
    <section>
      <h3>{words.placements}</h3>
      {placements.length > 0 && (
        <div className="grid-row grid-titles" aria-hidden="true">
          {[
            words.place,
            words.design,
            ...sizeGroups.map((group) => words.groups[group]),
            words.adultHeight,
            '',
          ].map((title) => (
            <span key={title}>{title}</span>
          ))}
        </div>
      )}
      <ul className="grid-list">
        {placements.map((placement) => (
          <PlacementRow key={placement.id} placement={placement} garments={garments} />
        ))}
      </ul>
      <div className="actions add-place">
        <Choice
          label={words.place}
          value={place}
          options={places.map((value) => ({ value, label: words.places[value] }))}
          onChange={setPlace}
        />
        <Button
          writes
          onPress={() =>
            act(
              edits.addPlacement(order.id as Id<'order'>, {
                place: words.places[place],
                design: words.aDesign,
                ratio: 1,
                widths: widthsOf(place),
              }),
            )
          }
        >
          {words.addPlacement}
        </Button>
      </div>
    </section>
  );
}

function PlacementRow({ placement, garments }: { placement: Placement; garments: readonly Garment[] }) {
  const reader = useReader();
  const { grid: words } = reader.words;
  const edit = (fields: Partial<PlacementFields>) => act(edits.editPlacement(placement.id, fields));
  const { adult } = placement.widths;
  const sizes = printedSizes(placement, garments);
  return (
    <li className="grid-placement">
      <div className="grid-row">
        <EntryCell
          label={words.place}
          value={placement.place}
          codec={name}
          reader={reader}
          onEntry={(place) => edit({ place })}
        />
        <EntryCell
          label={words.design}
          value={placement.design}
          codec={name}
          reader={reader}
          onEntry={(design) => edit({ design })}
        />
        {sizeGroups.map((group) => (
          <EntryCell
            key={group}
            label={words.widthFor(words.groups[group])}
            value={{ length: placement.widths[group].width, typed: placement.widths[group].typed }}
            codec={sizeAsTyped}
            reader={reader}
            onEntry={({ length, typed }) =>
              edit({ widths: { ...placement.widths, [group]: { width: length, typed } } })
            }
          />
        ))}
        <EntryCell
          label={words.adultHeight}
          value={um(adult.width * placement.ratio)}
          codec={shortLength('above-zero')}
          reader={reader}
          onEntry={(length) => edit({ ratio: length / adult.width })}
        />
        <Button
          writes
          weight="plain"
          aria-label={words.removePlacement}
          onPress={() => act(edits.removePlacement(placement.id))}
        >
          ✕
        </Button>
      </div>
      <SizeWidths placement={placement} garments={garments} onChange={(own) => edit({ sizes: own })} />
      <p className="quiet small">
        {sizes
          .map(({ typed, count, sizes: served }) => words.printed(typed, count, served.join(', '), reader))
          .join(' · ')}
      </p>
      {sizes.map(
        ({ tooWideFor, typed }) =>
          tooWideFor && (
            <p key={typed} className="care small">
              {words.tooWide(typed, tooWideFor)}
            </p>
          ),
      )}
    </li>
  );
}

/** The width of each size among the garments, its group's until it is given one of its own. */
function SizeWidths({
  placement,
  garments,
  onChange,
}: {
  placement: Placement;
  garments: readonly Garment[];
  onChange: (sizes: Placement['sizes']) => void;
}) {
  const reader = useReader();
  const { grid: words } = reader.words;
  const sizes = new Map(garments.map((garment) => [sizeKey(garment), garment]));
  if (sizes.size < 2) return null;
  const enter = (key: string, group: SizeGroup, { length, typed }: Sized) => {
    const { [key]: _, ...others } = placement.sizes;
    const isOwn = length !== placement.widths[group].width;
    onChange(isOwn ? { ...others, [key]: { width: length, typed } } : others);
  };
  return (
    <details open={Object.keys(placement.sizes).length > 0}>
      <summary>{words.sizeWidths}</summary>
      <div className="grid-row">
        {[...sizes].map(([key, garment]) => {
          const group = groupOf(garment);
          const { width, typed } = widthFor(placement, garment);
          return (
            <div key={key} className="size-width small">
              <span aria-hidden="true">
                {garment.size} <span className="quiet">{words.groups[group]}</span>
              </span>
              <EntryCell
                label={words.widthFor(`${garment.size}, ${words.groups[group]}`)}
                value={{ length: width, typed }}
                codec={sizeAsTyped}
                reader={reader}
                onEntry={(sized) => enter(key, group, sized)}
              />
            </div>
          );
        })}
      </div>
    </details>
  );
}
