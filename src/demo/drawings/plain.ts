import { boards, shirtNumberBoard } from './boards';
import { lettering } from './lettering';
import { ink } from './palette';
import type { Drawing } from './pen';
import { box, frame } from './shapes';

/** A figure for a shirt's back. */
export const shirtNumber = (figures: string): Drawing => ({
  ...shirtNumberBoard(figures),
  paint(pen) {
    const middle = 125 * figures.length + 50;
    for (const [size, colour] of [
      [700, ink.night],
      [640, ink.amber],
    ] as const) {
      lettering(pen, figures, middle, 496, middle * 2 - 10, { size, colour });
    }
    box(pen, ink.night, 0, 0, middle * 2, 16);
    box(pen, ink.night, 0, 504, middle * 2, 16);
  },
});

/** A name for a shirt's back. */
export const shirtName = (name: string): Drawing => ({
  ...boards.shirtName,
  paint(pen) {
    box(pen, ink.teal, 0, 214, 1200, 26);
    lettering(pen, name, 600, 184, 1180, { size: 240, colour: ink.night, tracking: 0.05 });
    box(pen, ink.teal, 0, 0, 1200, 14);
  },
});

/** What stands in the neck: size and care. */
export const neckTag = (shop: string, size: string): Drawing => ({
  ...boards.neckTag,
  paint(pen) {
    frame(pen, ink.night, 0, 0, 600, 420, 40, 12);
    lettering(pen, shop, 300, 120, 540, { size: 84, colour: ink.night });
    lettering(pen, size, 300, 270, 300, { size: 150, colour: ink.brick });
    lettering(pen, 'wash cool, inside out', 300, 360, 520, { size: 56, colour: ink.night });
  },
});

/** A line for a sleeve. */
export const sleeveLine = (text: string, colour: string): Drawing => ({
  ...boards.sleeveLine,
  paint(pen) {
    box(pen, colour, 0, 0, 1400, 22, 10);
    lettering(pen, text, 700, 140, 1390, { size: 130, colour, tracking: 0.08 });
    box(pen, colour, 0, 178, 1400, 22, 10);
  },
});
