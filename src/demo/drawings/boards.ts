/** What a drawing is drawn on, in units of its own. */
export interface Board {
  readonly width: number;
  readonly height: number;
}

/** Boards of drawings, and of kinds of drawings. Orders take their sizes from these alone; what is drawn on them comes later. */
export const boards = {
  badge: { width: 1000, height: 1000 },
  rowingEight: { width: 1400, height: 572 },
  loafLine: { width: 1491, height: 424 },
  coffeeCup: { width: 898, height: 1020 },
  oneMoreCup: { width: 1205, height: 201 },
  fairStar: { width: 1000, height: 1000 },
  bunting: { width: 1600, height: 405 },
  wheel: { width: 1000, height: 1000 },
  hillClimb: { width: 1500, height: 861 },
  seedling: { width: 800, height: 882 },
  handPrints: { width: 1193, height: 1157 },
  trumpet: { width: 1292, height: 778 },
  shirtName: { width: 1200, height: 240 },
  neckTag: { width: 600, height: 420 },
  sleeveLine: { width: 1400, height: 200 },
} as const satisfies Record<string, Board>;

/** A board as wide as so many figures. */
export const shirtNumberBoard = (figures: string): Board => ({
  width: 250 * figures.length + 100,
  height: 520,
});

const { badge, shirtName, neckTag, sleeveLine } = boards;

/** The board of each drawing of the demo day. */
export const boardOf = {
  crossedOars: badge,
  rowingEight: boards.rowingEight,
  rowingSleeve: sleeveLine,
  rowingTag: neckTag,
  bakery: badge,
  loafLine: boards.loafLine,
  bakerySleeve: sleeveLine,
  coffeeCup: boards.coffeeCup,
  oneMoreCup: boards.oneMoreCup,
  fairStar: boards.fairStar,
  bunting: boards.bunting,
  fairSleeve: sleeveLine,
  wheel: boards.wheel,
  hillClimb: boards.hillClimb,
  cyclingTag: neckTag,
  otter: badge,
  otterName: shirtName,
  number7: shirtNumberBoard('7'),
  number12: shirtNumberBoard('12'),
  number23: shirtNumberBoard('23'),
  seedling: boards.seedling,
  plotLine: sleeveLine,
  handPrints: boards.handPrints,
  classTag: neckTag,
  trumpet: boards.trumpet,
  jazzSleeve: sleeveLine,
  crewName: shirtName,
} as const satisfies Record<string, Board>;

export type DrawingName = keyof typeof boardOf;
