import { useEffect, useRef, useState } from 'react';
import { luminance, type MaskRuns } from '../../src/artwork';
import type { Micrometres } from '../../src/units';
import { Choice } from '../parts/Choice';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { fineLength } from '../words/format';
import type { Marks } from './marks';
import type { Picture } from './useArtworkPicture';

const zooms = ['1', '2', '4', '8'] as const;
type Zoom = (typeof zooms)[number];

/** What is shown of a print: the colours on their white, or the white alone. */
const layers = ['print', 'white'] as const;
export type Layer = (typeof layers)[number];

/** On a pale garment white would not be seen. */
const PALE = 0.4;
const INSTEAD = '#4a5058';
const behindWhite = (shade: string | null): string =>
  shade === null || luminance(shade) > PALE ? INSTEAD : shade;

/** More rings than this, or larger ones, hide what they show. */
const MOST_RINGS = 60;
const LARGEST_RING = 36;
const MARK = [226, 0, 122] as const;

/** The artwork on its garment's colour, with the places of a finding marked over it. */
export function PrintPicture({
  name,
  picture,
  shade,
  layer,
  onLayer,
  choke,
  marks,
}: {
  name: string;
  picture: Picture;
  shade: string | null;
  layer: Layer;
  onLayer: (layer: Layer) => void;
  choke: Micrometres;
  marks: Marks | null;
}) {
  const { artwork: words } = useAllWords();
  const ways = useWays();
  const canvas = useRef<HTMLCanvasElement>(null);
  const [zoom, setZoom] = useState<Zoom>('1');
  const bitmap = picture instanceof ImageBitmap ? picture : null;
  useEffect(() => {
    const context = canvas.current?.getContext('2d');
    if (!context || !bitmap) return;
    const { width, height } = context.canvas;
    context.fillStyle = layer === 'print' ? (shade ?? '#ffffff') : behindWhite(shade);
    context.fillRect(0, 0, width, height);
    context.drawImage(bitmap, 0, 0);
    if (marks) paintMarks(context, marks, Number(zoom));
  }, [bitmap, shade, layer, marks, zoom]);
  return (
    <div className="print-picture">
      {/* biome-ignore lint/a11y/useSemanticElements: no element stands for a picture that is scrolled */}
      <div
        className="print-scroll"
        role="group"
        aria-label={words.picture(name)}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what is scrolled by keys takes the focus
        tabIndex={0}
      >
        {picture === 'loading' && <p className="quiet">{words.loading}</p>}
        {picture === 'missing' && <p className="error">{words.pictureMissing}</p>}
        {bitmap && (
          <canvas
            ref={canvas}
            role="img"
            aria-label={words.picture(name)}
            width={bitmap.width}
            height={bitmap.height}
            className={zoom === '1' ? 'whole' : undefined}
            style={zoom === '1' ? undefined : { width: `${Number(zoom) * 100}%` }}
          />
        )}
      </div>
      <Choice
        label={words.layer}
        value={layer}
        options={layers.map((value) => ({ value, label: words.layers[value] }))}
        onChange={onLayer}
      />
      {layer === 'white' && <p className="hint">{words.whiteHint(fineLength(choke, ways))}</p>}
      <Choice
        label={words.zoom}
        value={zoom}
        options={zooms.map((value) => ({ value, label: words.zooms[value] }))}
        onChange={setZoom}
      />
    </div>
  );
}

/** The pixels of a mask in one colour. */
function maskPicture({ width, height, runs }: MaskRuns): HTMLCanvasElement {
  const sheet = document.createElement('canvas');
  sheet.width = width;
  sheet.height = height;
  const context = sheet.getContext('2d');
  const pixels = context?.createImageData(width, height);
  if (!context || !pixels) return sheet;
  const whole = new Uint32Array(pixels.data.buffer);
  const [colour] = new Uint32Array(Uint8Array.of(...MARK, 255).buffer);
  for (let pair = 0; pair < runs.length; pair += 2) whole.fill(colour as number, runs[pair], runs[pair + 1]);
  context.putImageData(pixels, 0, 0);
  return sheet;
}

/** The marked pixels, and rings around places, wide enough to be seen however small the place is. */
function paintMarks(context: CanvasRenderingContext2D, { where, places }: Marks, zoom: number): void {
  const { width, height } = context.canvas;
  context.imageSmoothingEnabled = false;
  if (where) context.drawImage(maskPicture(where), 0, 0, width, height);
  const unit = Math.max(width, height) / 600 / Math.sqrt(zoom);
  const rings = places
    .map((place) => ({
      x: (place.x + place.width / 2) * width,
      y: (place.y + place.height / 2) * height,
      radius: Math.max(9 * unit, (Math.hypot(place.width * width, place.height * height) / 2) * 1.1),
    }))
    .filter(({ radius }) => radius <= LARGEST_RING * unit)
    .slice(0, MOST_RINGS);
  for (const [line, colour] of [
    [5 * unit, '#ffffff'],
    [2.5 * unit, `rgb(${MARK.join(' ')})`],
  ] as const) {
    context.lineWidth = line;
    context.strokeStyle = colour;
    for (const { x, y, radius } of rings) {
      context.beginPath();
      context.arc(x, y, radius, 0, 2 * Math.PI);
      context.stroke();
    }
  }
}
