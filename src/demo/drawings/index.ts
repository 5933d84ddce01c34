import type { DrawingName } from './boards';
import {
  bakery,
  bunting,
  coffeeCup,
  crossedOars,
  fairStar,
  handPrints,
  hillClimb,
  loafLine,
  oneMoreCup,
  otter,
  rowingEight,
  seedling,
  trumpet,
  wheel,
} from './emblems';
import { ink } from './palette';
import type { Drawing } from './pen';
import { neckTag, shirtName, shirtNumber, sleeveLine } from './plain';

export type { Drawing, Pen } from './pen';

/** The demo day's artwork by name. */
export const drawings = {
  crossedOars,
  rowingEight,
  rowingSleeve: sleeveLine('PULL TOGETHER', ink.night),
  rowingTag: neckTag('Harbour Rowing', 'M'),
  bakery,
  loafLine,
  bakerySleeve: sleeveLine('FLOUR  WATER  TIME', ink.rust),
  coffeeCup,
  oneMoreCup,
  fairStar,
  bunting,
  fairSleeve: sleeveLine('ALL ARE WELCOME', ink.brick),
  wheel,
  hillClimb,
  cyclingTag: neckTag('Northgate', 'L'),
  otter,
  otterName: shirtName('COACH FINN'),
  number7: shirtNumber('7'),
  number12: shirtNumber('12'),
  number23: shirtNumber('23'),
  seedling,
  plotLine: sleeveLine('PLOT 14, ROW C', ink.moss),
  handPrints,
  classTag: neckTag('Willow class 4', 'XS'),
  trumpet,
  jazzSleeve: sleeveLine('SIX TILL LATE', ink.indigo),
  crewName: shirtName('CREW'),
} as const satisfies Record<DrawingName, Drawing>;
