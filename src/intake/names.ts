import Papa from 'papaparse';
import { separatorOf } from './separator';

/** A line of a names-and-numbers list. */
interface NameRow {
  readonly line: number;
  readonly name: string;
  readonly number: string;
  readonly size: string;
}

export interface NamesReading {
  readonly rows: readonly NameRow[];
  /** Lines with neither a name nor a number. */
  readonly bad: readonly number[];
}

/** A garment size as the trade writes it. */
const SIZE =
  /^(\d?X{0,3}[SML]|[2-6]XL|Y\s?X{0,2}[SML]|[2-6]\s?T|(?:youth|juvenil)\s.+|\d{1,3}\s?[-/]\s?\d{1,3}|\d{1,2}(?:-\d{1,2})?\s?(?:M|MONTHS?|MESES|Y|YEARS?|A[NÑ]OS)|NB|6X|\d{2,3})$/i;

/** Reads a list of names, numbers and garment sizes, in any order of the three: a number is figures, a size is a size. */
export function readNames(text: string): NamesReading {
  const { data } = Papa.parse<string[]>(text.trim(), { delimiter: separatorOf(text) });
  const rows: NameRow[] = [];
  const bad: number[] = [];
  for (const [index, record] of data.entries()) {
    const cells = record.map((cell) => cell.trim()).filter(Boolean);
    if (
      cells.length === 0 ||
      (index === 0 &&
        cells.some((cell) => /^(name|number|no\.?|size|nombre|n[uú]mero|n\.?º|talla)$/i.test(cell)))
    )
      continue;
    const number = cells.find((cell) => /^#?\d{1,3}$/.test(cell)) ?? '';
    const size = cells.find((cell) => cell !== number && SIZE.test(cell)) ?? '';
    const name = cells.find((cell) => cell !== number && cell !== size) ?? '';
    if (name === '' && number === '') bad.push(index + 1);
    else rows.push({ line: index + 1, name, number: number.replace('#', ''), size: size.toUpperCase() });
  }
  return { rows, bad };
}
