import * as z from 'zod/mini';
import type { OutlineProblem } from '../../src/nesting';
import type { Ring } from '../../src/outlines';
import { um } from '../../src/units';
import { count, filmFields, shaped, size } from './instance';

const ring = z.array(z.tuple([z.number(), z.number()])).check(z.minLength(3));

/** The instance format of days with outlines. */
const daySchema = z.object({
  ...filmFields,
  pieces: z.array(
    z.object({
      id: z.string(),
      count,
      rotations: z.union([z.literal('any'), z.array(z.number()).check(z.minLength(1))]),
      outline: z.array(ring).check(z.minLength(1)),
    }),
  ),
});

/** The format of the published outlines: a strip of a width, in units of their papers. */
const stripSchema = z.object({
  name: z.string(),
  width: size,
  pieces: z.array(
    z.object({ id: z.string(), count, rotations: z.array(z.number()).check(z.minLength(1)), polygon: ring }),
  ),
});

/** An instance of outlines, and what its unit is in micrometres. */
export interface OutlineInstance {
  readonly name: string;
  readonly problem: OutlineProblem;
  readonly unit: number;
}

/** Turns that are tried where any is allowed, in degrees. */
const ANY = [0, 45, 90, 135, 180, 225, 270, 315];

/** About how wide the strips of published outlines are taken to be, micrometres; their units are whole ones, so that what fits exactly still does. */
const STRIP = 1_000_000;

const ringOf = (corners: readonly (readonly [number, number])[], unit: number): Ring =>
  Float64Array.from(corners.flat(), (value) => value * unit);

/** By what its first piece bears it is told whether an instance is a day of outlines or a published strip. */
const firstPiece = z.object({
  pieces: z.tuple([z.record(z.string(), z.unknown())], z.unknown()),
});

/**
 * Reads an instance with outlines; `null` if it is of another kind.
 * @throws {Error} with one sentence that says what is wrong with it
 */
export function readOutlines(value: unknown): OutlineInstance | null {
  const begins = z.safeParse(firstPiece, value);
  const [first] = begins.success ? begins.data.pieces : [{}];
  if ('outline' in first) {
    const { name, film, margins, gap, spanMax, pieces } = shaped(daySchema, value);
    const µm = (mm: number) => um(Math.round(mm * 1000));
    return {
      name,
      unit: 1000,
      problem: {
        film:
          film.kind === 'roll'
            ? {
                kind: 'roll',
                width: µm(film.width),
                spanMax: typeof spanMax === 'number' ? µm(spanMax) : null,
                cutBlank: um(0),
                lengthLimit: null,
                lines: [],
                noPrint: [],
              }
            : { kind: 'sheet', width: µm(film.width), length: µm(film.length), sheetLimit: null },
        pinned: [],
        margins: {
          left: µm(margins.left),
          right: µm(margins.right),
          lead: µm(margins.lead),
          tail: µm(margins.tail),
        },
        gap: µm(gap),
        pieces: pieces.map(({ id, count: copies, rotations, outline }) => ({
          id,
          count: copies,
          rotations: rotations === 'any' ? ANY : rotations,
          rings: outline.map((corners) => ringOf(corners, 1000)),
        })),
      },
    };
  }
  if (!('polygon' in first)) return null;
  const { name, width, pieces } = shaped(stripSchema, value);
  const unit = Math.max(1, Math.round(STRIP / width));
  const none = um(0);
  return {
    name,
    unit,
    problem: {
      film: {
        kind: 'roll',
        width: um(Math.floor(width * unit)),
        spanMax: null,
        cutBlank: none,
        lengthLimit: null,
        lines: [],
        noPrint: [],
      },
      pinned: [],
      margins: { left: none, right: none, lead: none, tail: none },
      gap: none,
      pieces: pieces.map(({ id, count: copies, rotations, polygon }) => ({
        id,
        count: copies,
        rotations,
        rings: [ringOf(polygon, unit)],
      })),
    },
  };
}
