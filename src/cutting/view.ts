/**
 * How a map shows the film, its leading edge at the top.
 * `on-screen`: the canvas turned by a quarter, so nothing is mirrored.
 * `ink-up`: as it lies in the hands when it comes out, mirrored across the film and never along it.
 */
export type MapView = 'ink-up' | 'on-screen';

/**
 * Is the film seen mirrored across, by how the printer shows an image ink up, and whether the image is mirrored for it?
 */
export const isMirrored = (view: MapView, inkUp: 'mirrored' | 'plain', imageMirrored: boolean): boolean =>
  view === 'ink-up' && (inkUp === 'mirrored') !== imageMirrored;

/**
 * How far from the map's left edge a box begins.
 *
 * The canvas shows the film point (x, y) at `sx = y`, `sy = W - x`. A quarter turn that brings its left
 * edge to the top is `px = W - sy`, `py = sx`, which is (x, y) again: a rotation of a rotation. Only
 * the view from the ink side mirrors, to `W - x`.
 */
export const acrossMap = (
  mirrored: boolean,
  filmWidth: number,
  box: { readonly x: number; readonly width: number },
): number => (mirrored ? filmWidth - box.x - box.width : box.x);
