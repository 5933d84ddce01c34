import * as z from 'zod/mini';
import type { Problem } from '../../src/packing';
import { fromMm, um } from '../../src/units';

export const size = z.number().check(z.positive());
export const count = z.int().check(z.minimum(1), z.maximum(100_000));
const blank = z.number().check(z.nonnegative());

/** What instances say of the film, be their pieces boxes or outlines; lengths are millimetres. */
export const filmFields = {
  name: z.string(),
  film: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('roll'), width: size }),
    z.object({ kind: z.literal('sheet'), width: size, length: size }),
  ]),
  margins: z.object({ left: blank, right: blank, lead: blank, tail: blank }),
  gap: blank,
  spanMax: z.optional(z.nullable(size)),
};

/** The instance format of the published data. */
const instanceSchema = z.object({
  ...filmFields,
  pieces: z
    .array(
      z.object({
        id: z.string(),
        width: size,
        length: size,
        count,
        turn: z.enum(['fixed', 'quarter']),
      }),
    )
    .check(z.minLength(1)),
});

export type Instance = z.infer<typeof instanceSchema>;

/**
 * Reads JSON.
 * @throws {Error} with one sentence if it is none
 */
export function readJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw new Error('The instance is not JSON.');
  }
}

/**
 * A value of the shape that an instance should have.
 * @throws {Error} with one sentence that says what is wrong with it
 */
export function shaped<Shape>(schema: z.ZodMiniType<Shape>, value: unknown): Shape {
  const parsed = z.safeParse(schema, value);
  if (parsed.success) return parsed.data;
  const [issue] = parsed.error.issues;
  const where = issue?.path.join('.') || 'instance';
  throw new Error(`The instance is not of the expected shape: ${where}: ${issue?.message ?? 'unreadable'}.`);
}

/**
 * Reads an instance of boxes.
 * @throws {Error} with one sentence that says what is wrong with it
 */
export const readInstance = (value: unknown): Instance => shaped(instanceSchema, value);

/** A length rounded up to whole micrometres: what is laid out is never smaller than what was asked for. */
const upMm = (mm: number) => um(Math.ceil(mm * 1000 - 1e-6));

/** The instance as the engine takes it. */
export function problemOf({ film, margins, gap, spanMax, pieces }: Instance): Problem {
  return {
    film:
      film.kind === 'roll'
        ? {
            kind: 'roll',
            width: fromMm(film.width),
            lengthLimit: null,
            spanMax: typeof spanMax === 'number' ? fromMm(spanMax) : null,
            cutBlank: um(0),
            noPrint: [],
          }
        : {
            kind: 'sheet',
            width: fromMm(film.width),
            length: fromMm(film.length),
            sheetLimit: null,
            printed: 0,
          },
    margins: {
      left: upMm(margins.left),
      right: upMm(margins.right),
      lead: upMm(margins.lead),
      tail: upMm(margins.tail),
    },
    gap: um(2 * Math.ceil((gap * 1000) / 2 - 1e-6)),
    cutting: 'free',
    together: { kind: 'any' },
    pieces: pieces.map(({ id, width, length, count, turn }) => ({
      id,
      width: upMm(width),
      length: upMm(length),
      count,
      turn,
      rank: 0,
    })),
    pinned: [],
  };
}
