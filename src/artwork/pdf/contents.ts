/** `[a b c d e f]` of a coordinate system within another (ISO 32000-2, 8.3.3). */
export type Matrix = readonly [number, number, number, number, number, number];

/** What a page draws, one step after the other, as far as it tells of fonts and images. */
export type PageStep =
  | { readonly kind: 'save' | 'restore' }
  | { readonly kind: 'transform'; readonly matrix: Matrix }
  /** `within`: an image of so many pixels in the unit square of each of some systems. */
  | {
      readonly kind: 'image';
      readonly width: number;
      readonly height: number;
      readonly within: readonly Matrix[];
    }
  /** `missing`: the name of a font that is not in the file; `null` for one that is. */
  | { readonly kind: 'font'; readonly missing: string | null }
  | { readonly kind: 'text-mode'; readonly mode: number }
  | { readonly kind: 'text' };

export interface PageContents {
  /** Fonts that text is drawn in and that the file does not hold. */
  readonly fonts: readonly string[];
  /** Pixels on a point of the page, of its coarsest image; `null` without any. */
  readonly coarsest: number | null;
}

const times = (a: Matrix, b: Matrix): Matrix => [
  a[0] * b[0] + a[2] * b[1],
  a[1] * b[0] + a[3] * b[1],
  a[0] * b[2] + a[2] * b[3],
  a[1] * b[2] + a[3] * b[3],
  a[0] * b[4] + a[2] * b[5] + a[4],
  a[1] * b[4] + a[3] * b[5] + a[5],
];

/** Text that is neither filled nor stroked, alone or as a clip (ISO 32000-2, table 104). */
const UNSEEN = new Set([3, 7]);
/** An image of one pixel is a plain colour, however large it is drawn. */
const PLAIN = 1;

interface State {
  readonly matrix: Matrix;
  readonly missing: string | null;
  readonly mode: number;
}

/** A font's own name, without the tag of a subset (ISO 32000-2, 9.9.2). */
const named = (name: string): string => name.replace(/^[A-Z]{6}\+/, '');

/**
 * Which fonts a page lacks, and how coarse its images are.
 * @param user points of the page to one unit of its own, both ways
 */
export function contentsOf(steps: Iterable<PageStep>, user = 1): PageContents {
  const stack: State[] = [];
  let state: State = { matrix: [user, 0, 0, user, 0, 0], missing: null, mode: 0 };
  const fonts = new Set<string>();
  let coarsest: number | null = null;
  for (const step of steps) {
    switch (step.kind) {
      case 'save':
        stack.push(state);
        break;
      case 'restore':
        state = stack.pop() ?? state;
        break;
      case 'transform':
        state = { ...state, matrix: times(state.matrix, step.matrix) };
        break;
      case 'font':
        state = { ...state, missing: step.missing };
        break;
      case 'text-mode':
        state = { ...state, mode: step.mode };
        break;
      case 'text':
        if (state.missing !== null && !UNSEEN.has(state.mode)) fonts.add(named(state.missing));
        break;
      case 'image':
        if (step.width <= PLAIN && step.height <= PLAIN) break;
        for (const within of step.within) {
          const [a, b, c, d] = times(state.matrix, within);
          const density = Math.min(step.width / Math.hypot(a, b), step.height / Math.hypot(c, d));
          if (Number.isFinite(density)) coarsest = Math.min(coarsest ?? density, density);
        }
        break;
    }
  }
  return { fonts: [...fonts], coarsest };
}
