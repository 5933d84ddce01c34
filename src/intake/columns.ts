import type { LengthUnit } from '../units';
import { type Column, columnNames, headingKey, headingOf } from './headings';

/** The columns of a table without a heading, in their order. */
const unheaded = ['order', 'transfer', 'width', 'height', 'count', 'due', 'turn'] as const satisfies Column[];

/** Where each column lies in a row, and the unit its heading gives to bare numbers. */
export interface Columns {
  readonly at: Partial<Record<Column, number>>;
  readonly units: Partial<Record<Column, LengthUnit>>;
  readonly isHeading: boolean;
}

/** Columns without which there is nothing to print, and which these lack. */
export function missingColumns({ at }: Columns): Column[] {
  const needed: Column[] = at.size === undefined ? ['transfer', 'width', 'height'] : ['transfer'];
  return needed.filter((column) => at[column] === undefined);
}

/**
 * Reads a first row as headings, if three or more of its cells are known, or none has a figure in it; otherwise the
 * columns come in the order named.
 * @param mapped what the shop has said of headings, by {@link headingKey}
 */
export function columnsOf(
  firstRow: readonly string[],
  mapped: Readonly<Record<string, string>> = {},
): Columns {
  const at: Partial<Record<Column, number>> = {};
  const units: Partial<Record<Column, LengthUnit>> = {};
  let found = 0;
  for (const [index, cell] of firstRow.entries()) {
    const { column: known, unit } = headingOf(cell);
    const column = columnNames.find((name) => name === mapped[headingKey(cell)]) ?? known;
    if (!column || at[column] !== undefined) continue;
    at[column] = index;
    found += 1;
    if (unit !== null) units[column] = unit;
  }
  const words = firstRow.filter((cell) => cell.trim() !== '');
  const onlyWords = words.length >= 3 && words.every((cell) => !/\d/.test(cell));
  if (found >= 3 || onlyWords) return { at, units, isHeading: true };
  return {
    at: Object.fromEntries(unheaded.map((column, index) => [column, index])),
    units: {},
    isHeading: false,
  };
}
