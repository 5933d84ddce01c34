/** What parts the cells of a table. A comma may also be a decimal comma, so it is the last to be thought of. */
export type Separator = '\t' | ';' | ',';

/** How often each separator stands outside of quotes on a line. */
function countOutsideQuotes(line: string): Record<Separator, number> {
  const counts: Record<Separator, number> = { '\t': 0, ';': 0, ',': 0 };
  let quoted = false;
  for (let index = 0; index < line.length; index += 1) {
    const sign = line.charAt(index);
    // A quote opens at the start of a cell only: elsewhere it is an inch mark.
    if (sign === '"' && (quoted || index === 0 || /[\t;,]/.test(line[index - 1] ?? ''))) quoted = !quoted;
    else if (!quoted && (sign === '\t' || sign === ';' || sign === ',')) counts[sign] += 1;
  }
  return counts;
}

/** A longer line has told it long before its end. */
const MOST_LOOKED_AT = 100_000;

/** The first line that is not blank, as far as it is looked at. */
function firstLine(text: string): string {
  const from = text.search(/\S/);
  if (from < 0) return '';
  const start = Math.max(text.lastIndexOf('\n', from), text.lastIndexOf('\r', from)) + 1;
  const looked = text.slice(start, start + MOST_LOOKED_AT);
  return looked.slice(0, looked.search(/[\r\n]|$/));
}

/** Tells a table's separator by its first line: tabs, as a spreadsheet copies them; semicolons; else commas. */
export function separatorOf(text: string): Separator {
  const first = firstLine(text);
  const counts = countOutsideQuotes(first);
  if (counts['\t'] > 0) return '\t';
  return counts[';'] >= 2 || counts[';'] > counts[','] ? ';' : ',';
}
