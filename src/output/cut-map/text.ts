import type { Weight } from './marks';

/** How wide a text is set at a size, in the unit of the size. */
export type Measure = (text: string, size: number, weight: Weight) => number;

/** The same, asked once for each text: widths grow with the size. */
export function remembered(measure: Measure): Measure {
  const widths = new Map<string, number>();
  return (text, size, weight) => {
    const key = `${weight}${text}`;
    let width = widths.get(key);
    if (width === undefined) {
      width = measure(text, 1, weight);
      widths.set(key, width);
    }
    return width * size;
  };
}

/** Height of capitals and figures as a share of the em: Atkinson Hyperlegible Next has 668 in 1000. */
export const CAP = 0.668;

/** The text, or as much of it as fits with an ellipsis; empty, if not even a letter does. */
export function shortened(
  text: string,
  room: number,
  size: number,
  weight: Weight,
  measure: Measure,
): string {
  if (measure(text, size, weight) <= room) return text;
  const letters = [...text];
  let [least, most] = [0, letters.length];
  const cut = (count: number) => `${letters.slice(0, count).join('').trimEnd()}…`;
  while (least < most) {
    const middle = Math.ceil((least + most) / 2);
    if (measure(cut(middle), size, weight) <= room) least = middle;
    else most = middle - 1;
  }
  return least > 0 ? cut(least) : '';
}

/** The text in lines no wider than the room, broken at spaces; a single word may be shortened. */
export function wrapped(
  text: string,
  room: number,
  size: number,
  weight: Weight,
  measure: Measure,
): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && measure(longer, size, weight) > room) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  if (line !== '') lines.push(line);
  return lines.map((each) => shortened(each, room, size, weight, measure));
}
