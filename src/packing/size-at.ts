import { type AsTurned, asTurned } from '../outlines';
import { type Angle, degreesOf, type Micrometres, um } from '../units';
import type { Piece } from './problem';

type Shaped = Pick<Piece, 'width' | 'length' | 'outline'>;

/** How a piece lies at an angle: see {@link asTurned}. */
export const pieceAt = (piece: Shaped, angle: Angle): AsTurned =>
  asTurned(piece, piece.outline ?? null, degreesOf(angle));

/** The box that a piece takes at an angle. */
export function sizeAt(piece: Shaped, angle: Angle): { width: Micrometres; length: Micrometres } {
  const { width, length } = pieceAt(piece, angle);
  return { width: um(width), length: um(length) };
}
