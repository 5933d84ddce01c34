import { type LaidCopy, type LaidRun, onFilm } from '../../../src/layout';
import { boxRing } from '../../../src/outlines';
import { fromInches, fromMm, toMm } from '../../../src/units';
import { tintOf } from '../../parts/tints';
import { toScreen, type Viewport } from '../../store/viewport';
import { tapeInches } from '../../words/format';
import { paintCode, paintCodeAbove, paintCodeOf } from './codes';
import type { Outlines } from './outlines';
import type { Lies, Pictures } from './pictures';
import { type CanvasColours, FONT } from './theme';

/** All that a frame is drawn from. The canvas keeps nothing of its own. */
export interface Scene {
  readonly run: LaidRun;
  readonly view: Viewport;
  readonly pixels: { readonly width: number; readonly height: number };
  readonly colours: CanvasColours;
  readonly pictures: Pictures;
  readonly outlines: Outlines;
  /** Every copy is drawn with its outline, not only those selected. */
  readonly allOutlines: boolean;
  readonly unit: 'mm' | 'in';
  readonly selected: ReadonlySet<string>;
  /** The copies in the hand, drawn apart from the others. */
  readonly lifted: ReadonlySet<string>;
}

type Context = CanvasRenderingContext2D;

const RULER_LABEL = `13px ${FONT}`;

/** The film, its unprintable margins, and every copy in view but the lifted one. */
export function paintFilm(context: Context, scene: Scene): void {
  const { run, view, pixels, colours } = scene;
  const { film } = run;
  const length = Math.max(
    run.lengthUsed,
    film.kind === 'roll' ? film.lengthLeft : film.sheetsLeft * film.length,
  );
  const ground = toScreen(view, film.width, { x: 0, y: 0, width: film.width, length });
  const printed = toScreen(view, film.width, {
    x: film.margins.left,
    y: film.margins.lead,
    width: film.width - film.margins.left - film.margins.right,
    length: length - film.margins.lead - film.margins.tail,
  });
  context.fillStyle = colours.blank;
  context.fillRect(
    ground.left,
    ground.top,
    Math.min(ground.width, pixels.width - ground.left),
    ground.height,
  );
  context.fillStyle = colours.film;
  context.fillRect(
    printed.left,
    printed.top,
    Math.min(printed.width, pixels.width - printed.left),
    printed.height,
  );
  context.strokeStyle = colours.filmEdge;
  context.lineWidth = 1;
  context.strokeRect(
    ground.left + 0.5,
    ground.top + 0.5,
    Math.min(ground.width, pixels.width * 2),
    ground.height - 1,
  );
  paintNoPrint(context, scene);
  for (const copy of run.copies) if (!scene.lifted.has(copy.id)) paintCopy(context, scene, copy, 'lying');
}

/** Film that may not be used, hatched: what is printed or spoiled, scuffs and splices. */
function paintNoPrint(context: Context, { run, view, colours }: Scene): void {
  const { film, printedTo, spoiled } = run;
  const stretches = [
    ...(film.kind === 'roll' ? film.noPrint : []),
    ...spoiled,
    ...(printedTo > 0 ? [{ from: 0, to: printedTo }] : []),
  ];
  for (const { from, to } of stretches) {
    const { left, top, width, height } = toScreen(view, film.width, {
      x: 0,
      y: from,
      width: film.width,
      length: to - from,
    });
    context.save();
    context.beginPath();
    context.rect(left, top, width, height);
    context.clip();
    context.fillStyle = colours.blank;
    context.fillRect(left, top, width, height);
    context.strokeStyle = colours.filmEdge;
    context.lineWidth = 1;
    context.beginPath();
    for (let x = left - height; x < left + width; x += 14) {
      context.moveTo(x, top + height);
      context.lineTo(x + height, top);
    }
    context.stroke();
    context.restore();
  }
}

/** How a copy is held: lying still, in the hand where it may lie, or where it may not. */
export type Hold = 'lying' | 'held' | 'refused';

export function paintCopy(context: Context, scene: Scene, copy: LaidCopy, hold: Hold): void {
  const { view, pixels, colours, pictures, selected } = scene;
  const { left, top, width, height } = toScreen(view, scene.run.film.width, copy);
  if (left > pixels.width || left + width < 0 || top > pixels.height || top + height < 0) return;
  const box = { left, top, width, height };
  const tint = tintOf(copy.order.tint);
  context.save();
  // What its outline leaves bare of its box may bear other copies.
  if (copy.outline) {
    traceCopy(context, scene, copy);
    context.clip();
  }
  context.fillStyle = copy.transfer.shade ?? colours.paper;
  context.fillRect(left, top, width, height);
  const { artwork } = copy.transfer;
  const isDrawn = artwork !== null && pictures.draw(context, artwork, liesOf(scene, copy));
  if (!isDrawn) {
    context.globalAlpha = 0.16;
    context.fillStyle = tint;
    context.fillRect(left, top, width, height);
    context.globalAlpha = 1;
  }
  context.restore();
  const marked = selected.has(copy.id) || hold !== 'lying';
  if (marked || scene.allOutlines) paintOutline(context, scene, copy);
  context.strokeStyle = hold === 'refused' ? colours.error : marked ? colours.accent : tint;
  context.lineWidth = marked ? 3 : 1;
  traceCopy(context, scene, copy);
  context.stroke();
  if (!isDrawn) paintCode(context, copy, box);
  else paintCodeAbove(context, copy, box, scene.run.film.gap * view.scale);
  if (copy.pinned && !copy.fixed) paintPin(context, colours, left + width, top, Math.min(width, height));
}

/** How the picture of a copy lies on the screen. */
function liesOf({ view, run }: Scene, copy: LaidCopy): Lies {
  const { width, height } = copy.transfer;
  const corner = toScreen(view, run.film.width, { ...onFilm(copy, 0, 0), width: 0, length: 0 });
  return { angle: copy.angle, corner, across: width * view.scale, down: height * view.scale };
}

/** Begins a path along what a copy keeps the gap by: its outline, or its box. */
function traceCopy(context: Context, { view, run }: Scene, copy: LaidCopy): void {
  const at = (x: number, y: number) =>
    toScreen(view, run.film.width, { x: copy.x + x, y: copy.y + y, width: 0, length: 0 });
  context.beginPath();
  for (const ring of copy.outline ?? [boxRing(copy)]) {
    for (let corner = 0; corner < ring.length; corner += 2) {
      const { left, top } = at(ring[corner] as number, ring[corner + 1] as number);
      if (corner === 0) context.moveTo(left, top);
      else context.lineTo(left, top);
    }
    context.closePath();
  }
}

/** The copy's true outline, grown by half the gap. */
function paintOutline(context: Context, { view, run, colours, outlines }: Scene, copy: LaidCopy): void {
  const lines = outlines.get(copy, run.film.gap);
  if (!lines) return;
  context.save();
  context.beginPath();
  for (const line of lines) {
    for (let at = 0; at < line.length; at += 2) {
      const point = onFilm(copy, line[at] as number, line[at + 1] as number);
      const { left, top } = toScreen(view, run.film.width, { ...point, width: 0, length: 0 });
      if (at === 0) context.moveTo(left, top);
      else context.lineTo(left, top);
    }
    context.closePath();
  }
  context.strokeStyle = colours.accent;
  context.lineWidth = 1.5;
  context.setLineDash([4, 3]);
  context.stroke();
  context.restore();
}

/** The codes of copies that are pointed at or selected, over all others. */
export function paintCodesOf(context: Context, { view, run }: Scene, copies: readonly LaidCopy[]): void {
  for (const copy of copies) paintCodeOf(context, copy, toScreen(view, run.film.width, copy));
}

/** A pin's head and its point, in the corner away from the label. */
function paintPin(context: Context, colours: CanvasColours, right: number, top: number, room: number): void {
  const radius = Math.min(8, room / 5);
  const [x, y] = [right - radius - 5, top + radius + 5];
  context.fillStyle = colours.accent;
  context.beginPath();
  context.arc(x, y, radius, 0, 2 * Math.PI);
  context.fill();
  context.fillStyle = colours.surface;
  context.beginPath();
  context.arc(x, y, radius * 0.4, 0, 2 * Math.PI);
  context.fill();
}

/** Distances between ruler marks that read well, in each unit. */
const rulerSteps = {
  mm: [1, 5, 10, 50, 100, 500, 1000].map(fromMm),
  // A sixteenth is no whole micrometres: rounded, its multiples would drift.
  in: [1 / 16, 1 / 4, 1 / 2, 1, 6, 12, 60].map((each) => each * fromInches(1)),
};

/** The ruler along the film. */
export function paintRuler(context: Context, scene: Scene, height: number): void {
  const { view, pixels, colours, unit } = scene;
  const steps = rulerSteps[unit];
  const longest = steps.at(-1) ?? fromMm(1000);
  const minor = steps.find((step) => step * view.scale >= 7) ?? longest;
  const major = steps.find((step) => step * view.scale >= 64 && step % minor === 0) ?? longest;
  context.strokeStyle = colours.quiet;
  context.fillStyle = colours.quiet;
  context.lineWidth = 1;
  context.font = RULER_LABEL;
  context.textBaseline = 'alphabetic';
  context.textAlign = 'left';
  context.beginPath();
  const last = view.along + pixels.width / view.scale;
  for (let index = Math.floor(view.along / minor); index * minor <= last; index += 1) {
    const at = index * minor;
    const x = Math.round((at - view.along) * view.scale) + 0.5;
    const isMajor = Math.abs(at / major - Math.round(at / major)) < 1e-6;
    context.moveTo(x, height);
    context.lineTo(x, height - (isMajor ? 11 : 5));
    if (isMajor) context.fillText(rulerLabel(at, unit), x + 4, height - 12);
  }
  context.stroke();
}

/** In the one unit of the flags below the film. */
function rulerLabel(at: number, unit: 'mm' | 'in'): string {
  const length = fromMm(at / 1000);
  return unit === 'in' ? tapeInches(length) : `${toMm(length)} mm`;
}

/** Knife lines across the film, and under each a flag with its distance from the leading edge. */
export function paintKnifeLines(
  context: Context,
  scene: Scene,
  filmTop: number,
  flagTop: number,
  label: (index: number, at: number) => string,
): void {
  const { run, view, pixels, colours } = scene;
  const lines = run.spans?.slice(0, -1).map((span) => span.to) ?? [];
  context.font = `700 12px ${FONT}`;
  context.textAlign = 'center';
  context.textBaseline = 'middle';
  const film = toScreen(view, run.film.width, { x: 0, y: 0, width: run.film.width, length: 0 });
  let flaggedTo = Number.NEGATIVE_INFINITY;
  for (const [index, at] of lines.entries()) {
    const x = (at - view.along) * view.scale;
    if (x < -80 || x > pixels.width + 80) continue;
    context.strokeStyle = colours.error;
    context.lineWidth = 2;
    context.setLineDash([7, 5]);
    context.beginPath();
    context.moveTo(x, filmTop + Math.max(0, film.top));
    context.lineTo(x, flagTop + 4);
    context.stroke();
    context.setLineDash([]);
    const text = label(index, at);
    const width = context.measureText(text).width + 20;
    if (x - width / 2 < flaggedTo) continue;
    flaggedTo = x + width / 2 + 6;
    context.lineWidth = 1.5;
    context.fillStyle = colours.surface;
    context.beginPath();
    context.roundRect(x - width / 2, flagTop + 4, width, 24, 4);
    context.fill();
    context.stroke();
    context.fillStyle = colours.error;
    context.fillText(text, x, flagTop + 16.5);
  }
}
