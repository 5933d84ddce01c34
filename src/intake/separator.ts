/** What parts the cells of a table. A comma may also be a decimal comma, so it is the last to be thought of. */
export type Separator = '\t' | ';' | ',';

/** How often each separator stands outside of quotes on a line. */
function countOutsideQuotes(line: string): Record<Separator, number> {
  const counts: Record<Separator, number> = { '\t': 0, ';': 0, ',': 0 };
  let quoted = false;
  for (const [index, sign] of [...line].entries()) {
    // A quote opens at the start of a cell only: elsewhere it is an inch mark.
    if (sign === '"' && (quoted || index === 0 || /[\t;,]/.test(line[index - 1] ?? ''))) quoted = !quoted;
    else if (!quoted && (sign === '\t' || sign === ';' || sign === ',')) counts[sign] += 1;
  }
  return counts;
}

/** Tells a table's separator by its first line: tabs, as a spreadsheet copies them; semicolons; else commas. */
export function separatorOf(text: string): Separator {
  const first = text.split(/\r\n|\r|\n/).find((line) => line.trim() !== '') ?? '';
  const counts = countOutsideQuotes(first);
  if (counts['\t'] > 0) return '\t';
  return counts[';'] >= 2 || counts[';'] > counts[','] ? ';' : ',';
}
