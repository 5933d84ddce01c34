import { fromMm, type Micrometres, toMm } from '../../units';

/** A drawing's pen: what is needed of the 2D context of the HTML standard. */
export interface StripPen {
  fillStyle: unknown;
  font: string;
  textAlign: 'center' | 'left' | 'right' | 'start' | 'end';
  fillRect(x: number, y: number, width: number, height: number): void;
  fillText(text: string, x: number, y: number): void;
}

/** The strip's measure, from the inner edge of its first bar to the inner edge of its last. */
export const MEASURE = fromMm(500);

const EDGE = 20;
const BAR = 2;

/** The strip's size on a film: as much of the width as a letter takes, and the measure with its ends. */
export const stripSize = (filmWidth: Micrometres, margins: { left: Micrometres; right: Micrometres }) => ({
  width: Math.min(160, toMm(filmWidth) - toMm(margins.left) - toMm(margins.right)),
  length: toMm(MEASURE) + 2 * (EDGE + BAR),
});

/**
 * Draws the strip in millimetres, its leading end at the top: END 1 and END 2, an F, and a ladder whose outer bars are
 * 500 mm apart.
 */
export function drawStrip(pen: StripPen, width: number): void {
  const far = EDGE + BAR + toMm(MEASURE);
  pen.fillStyle = '#000';
  const text = (content: string, size: number, y: number) => {
    pen.font = `bold ${size}px sans-serif`;
    pen.textAlign = 'center';
    pen.fillText(content, width / 2, y);
  };
  text('END 1', 12, EDGE - 5);
  pen.fillRect(0, EDGE, width, BAR);
  pen.fillRect(0, far, width, BAR);
  for (let step = 1; step < 5; step += 1) {
    const y = EDGE + BAR + step * 100;
    pen.fillRect(0, y - 0.25, 30, 0.5);
    pen.font = 'bold 9px sans-serif';
    pen.textAlign = 'left';
    pen.fillText(String(step), 34, y + 3);
  }
  const [x, y, size] = [width / 2 - 30, EDGE + 130, 100];
  pen.fillRect(x, y, 18, size);
  pen.fillRect(x, y, 60, 18);
  pen.fillRect(x, y + 40, 44, 18);
  text('END 2', 12, far + EDGE - 5);
}
