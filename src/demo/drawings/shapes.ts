import type { Pen } from './pen';

export type Point = readonly [x: number, y: number];

const TURN = 2 * Math.PI;

/** The point of a circle; angles run clockwise from the right, as on a canvas. */
export const onCircle = (x: number, y: number, radius: number, angle: number): Point => [
  x + radius * Math.cos(angle),
  y + radius * Math.sin(angle),
];

/** Angles that part a full turn evenly, the first straight up. */
export const around = (count: number): number[] =>
  Array.from({ length: count }, (_, index) => (index / count) * TURN - TURN / 4);

/** Fills the closed outline that `trace` draws. */
function shape(pen: Pen, colour: string, trace: () => void): void {
  pen.beginPath();
  trace();
  pen.closePath();
  pen.fillStyle = colour;
  pen.fill();
}

/** Strokes the open path that `trace` draws, with round ends. */
export function line(pen: Pen, colour: string, width: number, trace: () => void): void {
  pen.beginPath();
  trace();
  pen.strokeStyle = colour;
  pen.lineWidth = width;
  pen.lineCap = 'round';
  pen.lineJoin = 'round';
  pen.stroke();
}

export function disc(pen: Pen, colour: string, x: number, y: number, radius: number): void {
  shape(pen, colour, () => pen.arc(x, y, radius, 0, TURN));
}

export function oval(
  pen: Pen,
  colour: string,
  x: number,
  y: number,
  radiusX: number,
  radiusY: number,
  turn = 0,
): void {
  shape(pen, colour, () => pen.ellipse(x, y, radiusX, radiusY, turn, 0, TURN));
}

/** A circle's line; `radius` is to its outer edge. */
export function ring(pen: Pen, colour: string, x: number, y: number, radius: number, width: number): void {
  line(pen, colour, width, () => pen.arc(x, y, radius - width / 2, 0, TURN));
}

export function polygon(pen: Pen, colour: string, points: readonly Point[]): void {
  shape(pen, colour, () => tracePoints(pen, points));
}

export function polyline(pen: Pen, colour: string, width: number, points: readonly Point[]): void {
  line(pen, colour, width, () => tracePoints(pen, points));
}

function tracePoints(pen: Pen, points: readonly Point[]): void {
  points.forEach(([x, y], index) => {
    if (index === 0) pen.moveTo(x, y);
    else pen.lineTo(x, y);
  });
}

/** A rectangle with round corners. */
export function box(
  pen: Pen,
  colour: string,
  x: number,
  y: number,
  width: number,
  height: number,
  radius = 0,
): void {
  shape(pen, colour, () => traceBox(pen, x, y, width, height, radius));
}

/** The line of a rectangle with round corners; `x`, `y`, `width` and `height` are to its outer edge. */
export function frame(
  pen: Pen,
  colour: string,
  x: number,
  y: number,
  width: number,
  height: number,
  radius: number,
  thickness: number,
): void {
  const inset = thickness / 2;
  line(pen, colour, thickness, () => {
    traceBox(pen, x + inset, y + inset, width - thickness, height - thickness, radius - inset);
    pen.closePath();
  });
}

function traceBox(pen: Pen, x: number, y: number, width: number, height: number, radius: number): void {
  const [right, bottom] = [x + width, y + height];
  pen.moveTo(x + radius, y);
  pen.arc(right - radius, y + radius, radius, -TURN / 4, 0);
  pen.arc(right - radius, bottom - radius, radius, 0, TURN / 4);
  pen.arc(x + radius, bottom - radius, radius, TURN / 4, TURN / 2);
  pen.arc(x + radius, y + radius, radius, TURN / 2, (3 * TURN) / 4);
}

/** A star with straight points, the first straight up. */
export function star(
  pen: Pen,
  colour: string,
  x: number,
  y: number,
  outer: number,
  inner: number,
  points: number,
): void {
  polygon(
    pen,
    colour,
    around(points * 2).map((angle, index) => onCircle(x, y, index % 2 === 0 ? outer : inner, angle)),
  );
}

/** Draws once as it is and once mirrored about the upright line at `x`. */
export function mirrored(pen: Pen, x: number, draw: () => void): void {
  draw();
  pen.save();
  pen.translate(2 * x, 0);
  pen.scale(-1, 1);
  draw();
  pen.restore();
}
