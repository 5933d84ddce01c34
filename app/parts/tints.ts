import type {} from 'react';

/** Tints of the first orders, chosen by eye; each reaches 4.5 under white text (WCAG 2.2, contrast minimum). */
const chosen = [
  '#B4541A',
  '#4A53A4',
  '#3F7A22',
  '#A33A78',
  '#1F7180',
  '#7A5A00',
  '#6B4FA0',
  '#A63A3A',
] as const;

/** How light the tints after those are, in turn: none so light that white text on it would fail. */
const LIGHTNESS = [0.34, 0.22, 0.28];

/** An angle of which no few multiples lie near each other, in degrees. */
const GOLDEN = 137.508;

/** The tint of an order, none like another: beyond those chosen by eye, hues spread by the golden angle. */
export function tintOf(tint: number): string {
  const known = chosen[tint];
  if (known !== undefined) return known;
  const hue = (tint * GOLDEN) % 360;
  // Greens and yellows look lighter than they are: they are darkened until white is read on them.
  const isBright = hue > 35 && hue < 200;
  const lightness = (LIGHTNESS[tint % LIGHTNESS.length] ?? 0.28) * (isBright ? 0.72 : 1);
  return hex(hue, isBright ? 0.8 : 0.55, lightness);
}

/** A colour by hue in degrees, saturation and lightness (CSS Color 4, section 7.1). */
function hex(hue: number, saturation: number, lightness: number): string {
  const channel = (n: number): string => {
    const k = (n + hue / 30) % 12;
    const part = lightness - saturation * lightness * Math.max(-1, Math.min(k - 3, 9 - k, 1));
    return Math.round(part * 255)
      .toString(16)
      .padStart(2, '0')
      .toUpperCase();
  };
  return `#${channel(0)}${channel(8)}${channel(4)}`;
}

declare module 'react' {
  interface CSSProperties {
    /** What an order is tinted with, for style sheets. */
    '--tint'?: string;
  }
}
