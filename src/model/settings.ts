import * as z from 'zod/mini';
import { type Settings, settingsSchema } from './records';

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * A value as its schema has it: of an object each field that can be read, and for the others those of another; of a list the entries
 * that can be.
 */
function mended(schema: z.core.$ZodType, value: unknown, other: unknown): unknown {
  const read = z.safeParse(schema, value);
  if (read.success) return read.data;
  if (schema instanceof z.ZodMiniObject && isObject(value) && isObject(other)) {
    const fields: [string, z.core.$ZodType][] = Object.entries(schema.shape);
    return Object.fromEntries(fields.map(([name, field]) => [name, mended(field, value[name], other[name])]));
  }
  if (schema instanceof z.ZodMiniArray && Array.isArray(value)) {
    const { element } = schema.def;
    const left = value.filter((entry) => z.safeParse(element, entry).success);
    return z.safeParse(schema, left).success ? left : other;
  }
  if (schema instanceof z.ZodMiniTuple && Array.isArray(value)) {
    const { rest } = schema.def;
    const left = rest ? value.filter((entry) => z.safeParse(rest, entry).success) : [];
    return z.safeParse(schema, left).success ? left : other;
  }
  return other;
}

export type SettingsField = keyof Settings;

/** All settings, in the order of their record. */
export const settingsFields = Object.keys(settingsSchema.shape) as SettingsField[];

/**
 * Reads settings field by field, so that one that is damaged costs no other.
 * @param first what stands in for what cannot be read: the settings that a shop begins with
 * @returns the settings, and the fields in which something had to stand in
 */
export function readSettings(
  value: unknown,
  first: Settings,
): { settings: Settings; fellBack: readonly SettingsField[] } {
  const stored = isObject(value) ? value : {};
  const read = z.safeParse(settingsSchema, mended(settingsSchema, stored, first));
  return {
    settings: read.success ? read.data : first,
    fellBack: settingsFields.filter((name) => !z.safeParse(settingsSchema.shape[name], stored[name]).success),
  };
}
