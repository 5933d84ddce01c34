import type { Board } from './boards';

/**
 * What a drawing needs of a canvas: a subset of the 2D context of the HTML standard, so that drawings
 * compile and are tested without a browser. Setters take plain colours only; what they read is not used.
 */
export interface Pen {
  get fillStyle(): unknown;
  set fillStyle(colour: string);
  get strokeStyle(): unknown;
  set strokeStyle(colour: string);
  globalAlpha: number;
  lineWidth: number;
  lineCap: 'butt' | 'round' | 'square';
  lineJoin: 'bevel' | 'miter' | 'round';
  font: string;
  textAlign: 'center' | 'end' | 'left' | 'right' | 'start';
  save(): void;
  restore(): void;
  translate(x: number, y: number): void;
  rotate(angle: number): void;
  scale(x: number, y: number): void;
  beginPath(): void;
  closePath(): void;
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  quadraticCurveTo(cx: number, cy: number, x: number, y: number): void;
  bezierCurveTo(c1x: number, c1y: number, c2x: number, c2y: number, x: number, y: number): void;
  arc(x: number, y: number, radius: number, start: number, end: number, counterclockwise?: boolean): void;
  ellipse(
    x: number,
    y: number,
    radiusX: number,
    radiusY: number,
    rotation: number,
    start: number,
    end: number,
    counterclockwise?: boolean,
  ): void;
  fill(rule?: 'nonzero' | 'evenodd'): void;
  stroke(): void;
  fillText(text: string, x: number, y: number): void;
  measureText(text: string): { readonly width: number };
}

/** A piece of vector artwork on a board of its own units; its ink touches all four edges of the board. */
export interface Drawing extends Board {
  paint(pen: Pen): void;
}
