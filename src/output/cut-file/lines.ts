import { rectClip } from 'clipper2-ts';
import { acrossMap, copiesWithin, cutOrder, liesWithin, runSpans, spanCorners } from '../../cutting';
import type { LaidCopy, LaidRun } from '../../layout';
import { boxRing, isOuter, type Ring } from '../../outlines';
import { grown } from '../../outlines/grown';
import type { Span } from '../../packing';

/** A closed line of corners in millimetres: across from the left edge as the film lies, down from its leading edge. */
export type CutRing = readonly (readonly [x: number, y: number])[];

/** What a knife follows to take one copy out: what lies in its holes is out by then, holes are cut first, what is around it last. */
interface CutCopy {
  readonly code: string;
  readonly number: number;
  readonly rings: readonly CutRing[];
}

/** The lines of one span, or sheet, at the size that it is printed. */
export interface CutFile {
  readonly kind: 'span' | 'sheet';
  /** From 1, of so many. */
  readonly number: number;
  readonly of: number;
  /** Of the film, millimetres. */
  readonly width: number;
  readonly height: number;
  /** In the order in which they are cut. */
  readonly copies: readonly CutCopy[];
  readonly corners: readonly CutRing[];
  /** Copies that fall into several pieces when all lines are cut. */
  readonly loose: number;
}

const known = new WeakMap<readonly Ring[], Map<number, readonly Ring[]>>();

/** An outline grown, once for all copies that lie so. */
function grownOnce(rings: readonly Ring[], by: number): readonly Ring[] {
  const own = known.get(rings) ?? new Map<number, readonly Ring[]>();
  known.set(rings, own);
  const last = own.get(by);
  if (last) return last;
  const made = grown(rings, by);
  own.set(by, made);
  return made;
}

/** What is cut around a copy: its outline or box, half a gap away, where it lies, and no further than its film goes. */
function linesOf({ film }: LaidRun, span: Span, copy: LaidCopy): Ring[] {
  const rings = copy.outline ? grownOnce(copy.outline, film.gap / 2) : grown([boxRing(copy)], film.gap / 2);
  const paths = rings.map((ring) =>
    Array.from({ length: ring.length / 2 }, (_, at) => ({
      x: Math.round((ring[2 * at] as number) + copy.x),
      y: Math.round((ring[2 * at + 1] as number) + copy.y),
    })),
  );
  const edges = { left: 0, top: span.from, right: film.width, bottom: span.to };
  return rectClip(edges, paths)
    .filter(({ length }) => length > 2)
    .map((path) => Float64Array.from(path.flatMap(({ x, y }) => [x, y])));
}

/** A copy with its lines; each hole that others lie in with them. */
interface Taken {
  readonly copy: LaidCopy;
  readonly outer: readonly Ring[];
  readonly holes: readonly { readonly ring: Ring; readonly within: readonly LaidCopy[] }[];
}

function takenOf(copy: LaidCopy, lines: readonly Ring[], others: readonly LaidCopy[]): Taken {
  const holes = lines.filter((ring) => !isOuter(ring));
  return {
    copy,
    outer: lines.filter(isOuter),
    holes: holes.flatMap((ring) => {
      const within = others.filter((other) => other !== copy && liesWithin(other, ring, { x: 0, y: 0 }));
      // A hole that bears nothing stays: cutting it would take time, and leave less to hold the film by.
      return within.length > 0 ? [{ ring, within }] : [];
    }),
  };
}

/** The copies of a span in the order in which a knife takes them out: what lies in a hole before what it lies in. */
function inOrder(taken: ReadonlyMap<string, Taken>, order: readonly LaidCopy[]): Taken[] {
  const done = new Set<string>();
  const all: Taken[] = [];
  const take = ({ id }: LaidCopy): void => {
    const own = taken.get(id);
    if (!own || done.has(id)) return;
    done.add(id);
    for (const { within } of own.holes) for (const inner of within) take(inner);
    all.push(own);
  };
  order.forEach(take);
  return all;
}

/**
 * What a contour cutter follows to take a run apart, a file for each span or sheet: around every copy its outline, half a gap away, in the
 * order in which copies are cut. Lengths along the film are as the film is printed, which the printer may feed long or short.
 * @param mirrored across the film, as it lies: see {@link acrossMap}
 * @param withCorners whether the registration corners of the print-ready image are told
 */
export function cutFiles(
  run: LaidRun,
  { mirrored, withCorners }: { readonly mirrored: boolean; readonly withCorners: boolean },
): CutFile[] {
  const spans = runSpans(run);
  return cutOrder(run).flatMap(({ span: index, steps }): CutFile[] => {
    const span = spans[index];
    if (!span) return [];
    const copies = copiesWithin(run.copies, span);
    if (copies.length === 0) return [];
    const place = (ring: Ring): CutRing =>
      Array.from({ length: ring.length / 2 }, (_, at) => [
        acrossMap(mirrored, run.film.width, { x: ring[2 * at] as number, width: 0 }) / 1000,
        (((ring[2 * at + 1] as number) - span.from) * run.view.stretch) / 1000,
      ]);
    const taken = new Map(copies.map((copy) => [copy.id, takenOf(copy, linesOf(run, span, copy), copies)]));
    const order = steps.flatMap((step) => (step.kind === 'copy' ? [step.copy] : []));
    // Where straight cuts take a span apart, each copy is cut around all the same.
    const all = inOrder(taken, [...order, ...copies]);
    return [
      {
        kind: run.film.kind === 'sheets' ? 'sheet' : 'span',
        number: index + 1,
        of: spans.length,
        width: run.film.width / 1000,
        height: ((span.to - span.from) * run.view.stretch) / 1000,
        copies: all.map(
          ({
            copy: {
              order: { code },
              number,
            },
            outer,
            holes,
          }) => ({
            code,
            number,
            rings: [...holes.map(({ ring }) => ring), ...outer].map(place),
          }),
        ),
        corners: withCorners ? spanCorners(run, span).map(({ ring }) => place(ring)) : [],
        loose: all.filter(({ outer }) => outer.length > 1).length,
      },
    ];
  });
}
