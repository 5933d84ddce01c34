import { expose } from 'comlink';
import { withDensity } from '../../artwork';
import { drawings } from '../drawings';
import type { Artist } from './artist';

/** Empty margin around every drawing, as artwork usually comes: a share of the board's longer side. */
const MARGIN = 0.06;
const MM_PER_INCH = 25.4;
const MM_PER_METRE = 1000;

const artist: Artist = {
  async letterWith(url) {
    const face = new FontFace('Atkinson Hyperlegible Next', `url(${url})`, { weight: '700' });
    self.fonts.add(face);
    await face.load().catch(() => undefined);
  },
  async draw(name, { widthMm, ppi }) {
    const { width, height, paint } = drawings[name];
    const scale = ((widthMm / MM_PER_INCH) * ppi) / width;
    const margin = MARGIN * Math.max(width, height);
    const canvas = new OffscreenCanvas(
      Math.ceil((width + 2 * margin) * scale),
      Math.ceil((height + 2 * margin) * scale),
    );
    const pen = canvas.getContext('2d');
    if (!pen) throw new Error('no 2d context');
    pen.scale(scale, scale);
    pen.translate(margin, margin);
    paint(pen);
    const png = new Uint8Array(await (await canvas.convertToBlob({ type: 'image/png' })).arrayBuffer());
    const density = (ppi / MM_PER_INCH) * MM_PER_METRE;
    return new Blob([withDensity(png, { x: density, y: density })], { type: 'image/png' });
  },
};

expose(artist);
