/** A default user space unit is 1/72 of an inch (ISO 32000-2, 8.3.2.3); a page may say how many of them its own are. */
const METRES_PER_POINT = 0.0254 / 72;
const POINTS_PER_INCH = 72;
/** Printed pixels an inch; a small page is looked at no coarser than a drawing of any size. */
const PPI = 300;
const LEAST = 1600;
const MOST_PIXELS = 16_000_000;

interface Size {
  readonly width: number;
  readonly height: number;
}

/** A page's size in metres. @param points its box, turned as the page is, in 1/72 of an inch */
export const inMetres = ({ width, height }: Size): Size => ({
  width: width * METRES_PER_POINT,
  height: height * METRES_PER_POINT,
});

/** The pixels in which a page is looked at, of a size in points. */
export function rasterOf({ width, height }: Size): Size {
  const scale = Math.min(
    Math.max(PPI / POINTS_PER_INCH, LEAST / Math.max(width, height)),
    Math.sqrt(MOST_PIXELS / (width * height)),
  );
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}
