/** Sizes in millimetres, portrait: A4 by ISO 216, Letter (size A, 8.5 x 11 in) by ANSI/ASME Y14.1. */
const PAPERS = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
} as const;

export type Paper = keyof typeof PAPERS;

/** A sheet and where on it things lie, in millimetres. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  /** Within what a desktop printer can reach. */
  readonly left: number;
  readonly right: number;
  /** Where film may be drawn. */
  readonly filmLeft: number;
  readonly filmTop: number;
  readonly filmBottom: number;
  /** All is drawn on a sheet so much smaller than the paper, and then enlarged: for tired eyes. */
  readonly zoom: number;
}

/** How the map lies on its paper. */
export interface Form {
  readonly paper: Paper;
  readonly landscape: boolean;
  readonly large: boolean;
}

const LARGE = 1.35;

/** Left of the film: how far apart the knife lines are. */
const GUTTER = 28;

export function sheetOf({ paper, landscape, large }: Form): Sheet {
  const zoom = large ? LARGE : 1;
  const { width: short, height: long } = PAPERS[paper];
  const [width, height] = (landscape ? [long, short] : [short, long]).map((side) => side / zoom) as [
    number,
    number,
  ];
  const left = 12;
  return {
    width,
    height,
    left,
    right: width - left,
    filmLeft: left + GUTTER,
    filmTop: 37,
    filmBottom: height - 31,
    zoom,
  };
}
