import { writeFileSync } from 'node:fs';
import type { Frame } from '../tests/hand-over/photograph';

/**
 * A film that Chromium's fake camera plays over and over (YUV4MPEG2, 4:2:0, without colour). Sides must be even: of frames with an odd
 * one it shows two black pixels.
 * @param frames all of one size
 * @param each milliseconds that each is shown
 */
export function writeFilm(path: string, frames: readonly Frame[], each: number): void {
  const [{ width, height } = { width: 0, height: 0 }] = frames;
  if (width % 2 !== 0 || height % 2 !== 0) throw new Error('a film needs even sides');
  const grey = Buffer.alloc((width * height) / 2, 128);
  const header = Buffer.from(`YUV4MPEG2 W${width} H${height} F1000:${each} Ip A1:1 C420jpeg\n`);
  const parts = frames.flatMap(({ luma }) => [Buffer.from('FRAME\n'), Buffer.from(luma), grey]);
  writeFileSync(path, Buffer.concat([header, ...parts]));
}
