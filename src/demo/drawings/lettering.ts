import type { Pen } from './pen';

interface Lettering {
  readonly size: number;
  readonly colour: string;
  /** Space between letters, as a share of the size. */
  readonly tracking?: number;
}

const setFont = (pen: Pen, size: number) => {
  pen.font = `bold ${size}px 'Atkinson Hyperlegible Next', sans-serif`;
};

/** The letters and how far each takes the pen on, at the font that is set. */
function advances(pen: Pen, text: string, space: number): { letters: [string, number][]; total: number } {
  const letters = [...text].map((letter): [string, number] => [
    letter,
    pen.measureText(letter).width + space,
  ]);
  return { letters, total: letters.reduce((sum, [, advance]) => sum + advance, -space) };
}

/** Sets the font, smaller than asked for where the text would be longer than `longest` in the font at hand. */
function fitted(pen: Pen, text: string, { size, tracking = 0 }: Lettering, longest: number) {
  setFont(pen, size);
  const { total } = advances(pen, text, size * tracking);
  const smaller = size * Math.min(1, longest / total);
  setFont(pen, smaller);
  return { size: smaller, ...advances(pen, text, smaller * tracking) };
}

/** A line of text about the middle `x`, its capitals standing on `y`, never wider than `widest`. */
export function lettering(
  pen: Pen,
  text: string,
  x: number,
  y: number,
  widest: number,
  style: Lettering,
): void {
  const { letters, total } = fitted(pen, text, style, widest);
  pen.fillStyle = style.colour;
  pen.textAlign = 'left';
  let at = x - total / 2;
  for (const [letter, advance] of letters) {
    pen.fillText(letter, at, y);
    at += advance;
  }
}

/**
 * Text along a circle about (`x`, `y`), its middle at the top or the bottom, read from left to right.
 * @param radius from the centre to the feet of the letters
 * @param widest the angle it may take, in radians
 */
export function arcLettering(
  pen: Pen,
  text: string,
  {
    x,
    y,
    radius,
    side,
    widest,
  }: { x: number; y: number; radius: number; side: 'top' | 'bottom'; widest: number },
  style: Lettering,
): void {
  const { letters, total } = fitted(pen, text, style, widest * radius);
  const sense = side === 'top' ? 1 : -1;
  pen.fillStyle = style.colour;
  pen.textAlign = 'center';
  const space = style.size * (style.tracking ?? 0);
  let along = -total / 2;
  for (const [letter, advance] of letters) {
    pen.save();
    pen.translate(x, y);
    pen.rotate((sense * (along + (advance - space) / 2)) / radius);
    pen.fillText(letter, 0, -sense * radius);
    pen.restore();
    along += advance;
  }
}
