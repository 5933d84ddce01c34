import type { LengthUnit } from '../units';
import { headingKey, tableKey } from './heading-key';
import { type Column, columnNames, headingOf } from './headings';

/** The columns of a table without a heading, in their order. */
const unheaded = ['order', 'transfer', 'width', 'height', 'count', 'due', 'turn'] as const satisfies Column[];

/** Where each column lies in a row, and the unit its heading gives to bare numbers. */
export interface Columns {
  readonly at: Partial<Record<Column, number>>;
  readonly units: Partial<Record<Column, LengthUnit>>;
  readonly isHeading: boolean;
}

/** Columns without which there is nothing to print, and which these lack; a height that is told nowhere follows the artwork. */
export function missingColumns({ at }: Columns): Column[] {
  const needed: Column[] = at.size === undefined ? ['transfer', 'width'] : ['transfer'];
  return needed.filter((column) => at[column] === undefined);
}

/** What the shop has said of headings, each by its {@link headingKey}: the column it means, or `none` that is used. */
export interface Mapped {
  /** Of the headings of a table, by its {@link tableKey}: this holds for tables of these headings alone. */
  readonly tables: Readonly<Record<string, Readonly<Record<string, string>>>>;
  /** Of headings that mean nothing by themselves, in any table. */
  readonly columns: Readonly<Record<string, string>>;
}

/** What a heading was said to mean: a column, none, or nothing was said of it. */
const columnSaid = (said: string | undefined): Column | 'none' | undefined =>
  said === 'none' ? said : columnNames.find((name) => name === said);

/**
 * Reads a first row as headings, if three or more of its cells are known, none has a figure in it, or its columns were said before;
 * otherwise the columns come in the order named. What was said of a heading in a table like this goes before what was said of it in
 * others, and both before what it means by itself, and that before what a vague one may mean; of two headings of a column the one told
 * by the higher of these, then the first.
 */
export function columnsOf(
  firstRow: readonly string[],
  mapped: Mapped = { tables: {}, columns: {} },
): Columns {
  const ofTable = mapped.tables[tableKey(firstRow)];
  const cells = firstRow.map((cell, index) => {
    const key = headingKey(cell);
    const { column, unit, isVague, otherwise } = headingOf(cell);
    const said = [ofTable?.[key], mapped.columns[key]].map(columnSaid);
    return { index, unit, ranked: [...said, isVague ? undefined : column, column], otherwise };
  });
  const at: Partial<Record<Column, number>> = {};
  const units: Partial<Record<Column, LengthUnit>> = {};
  const take = (column: Column | 'none' | undefined, index: number, unit: LengthUnit | null) => {
    if (column === undefined || column === 'none' || at[column] !== undefined) return;
    at[column] = index;
    if (unit !== null) units[column] = unit;
  };
  for (const rank of [0, 1, 2, 3]) {
    for (const { index, unit, ranked } of cells) {
      if (ranked.findIndex((column) => column !== undefined) === rank) take(ranked[rank], index, unit);
    }
  }
  const namesOrder = at.order !== undefined || at.number !== undefined;
  for (const { index, ranked, otherwise } of cells) {
    const isFree = ranked[0] === undefined && ranked[1] === undefined && !Object.values(at).includes(index);
    if (otherwise && isFree && !namesOrder) take(otherwise, index, null);
  }
  const words = firstRow.filter((cell) => cell.trim() !== '');
  const onlyWords = words.length >= 3 && words.every((cell) => !/\d/.test(cell));
  if (ofTable || Object.keys(at).length >= 3 || onlyWords) return { at, units, isHeading: true };
  return {
    at: Object.fromEntries(unheaded.map((column, index) => [column, index])),
    units: {},
    isHeading: false,
  };
}

/** A heading of a table, and the column that is read from there. */
export interface Heading {
  readonly text: string;
  readonly column: Column | null;
}

/** The headings of a first row, each once. */
export function headingsOf(firstRow: readonly string[], { at, isHeading }: Columns): Heading[] {
  if (!isHeading) return [];
  const columnAt = new Map(
    columnNames.flatMap((column) => (at[column] === undefined ? [] : [[at[column], column]])),
  );
  const headings = new Map<string, Heading>();
  for (const [index, text] of firstRow.entries()) {
    const column = columnAt.get(index) ?? null;
    const key = headingKey(text);
    if (key !== '' && (column !== null || !headings.has(key)))
      headings.set(key, { text: text.trim(), column });
  }
  return [...headings.values()];
}
