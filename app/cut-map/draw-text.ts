import type { TextMark } from '../../src/output/cut-map';
import type { TextPicture } from '../../src/output/pdf';
import { FAMILY, penOn } from './fonts';
import { tones } from './tones';

/** Pixels of a drawn text to a millimetre: 600 an inch. */
const FINE = 600 / 25.4;

/** A text as the browser's own fonts draw it, whatever its script. */
export async function drawText({ text, size, weight, tone }: TextMark): Promise<TextPicture> {
  const font = `${weight} ${size * FINE}px ${FAMILY}`;
  const ruler = penOn(new OffscreenCanvas(1, 1));
  ruler.font = font;
  const box = ruler.measureText(text);
  const left = Math.ceil(box.actualBoundingBoxLeft) + 1;
  const ascent = Math.ceil(box.actualBoundingBoxAscent) + 1;
  const canvas = new OffscreenCanvas(
    left + Math.ceil(box.actualBoundingBoxRight) + 1,
    ascent + Math.ceil(box.actualBoundingBoxDescent) + 1,
  );
  const pen = penOn(canvas);
  pen.font = font;
  pen.fillStyle = tones[tone];
  pen.fillText(text, left, ascent);
  const png = await canvas.convertToBlob({ type: 'image/png' });
  return {
    png: new Uint8Array(await png.arrayBuffer()),
    advance: box.width / FINE,
    left: -left / FINE,
    ascent: ascent / FINE,
    width: canvas.width / FINE,
    height: canvas.height / FINE,
  };
}
