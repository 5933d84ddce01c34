import type { Curer, CureValues, PressValues } from '../model';
import {
  asSeconds,
  type Fabric,
  fromDegrees,
  fromMm,
  type Micrometres,
  type Seconds,
  type Temperature,
} from '../units';

/**
 * Why a value of a recipe is questioned. It can be kept all the same: the maker's data sheet knows better.
 * The limits are common practice, without a source.
 */
export type Question =
  /** The figure makes sense in the other unit: 330 typed as Celsius. */
  | { readonly code: 'other-unit'; readonly meant: Temperature }
  | { readonly code: 'scorches'; readonly most: Temperature }
  | { readonly code: 'dye-migrates'; readonly most: Temperature }
  | { readonly code: 'melts-nothing'; readonly least: Temperature }
  | { readonly code: 'too-short' | 'too-long'; readonly least: Seconds; readonly most: Seconds }
  | { readonly code: 'pre-press-long' | 'second-press-long' | 'wait-long'; readonly most: Seconds }
  | { readonly code: 'clear-off'; readonly least: Micrometres; readonly most: Micrometres };

const f = (degrees: number) => fromDegrees(degrees, 'F');

/** Above it the fabric may scorch, glaze, melt or shrink. */
const known: Readonly<Record<Exclude<Fabric, 'other'>, Temperature>> = {
  cotton: f(350),
  blend: f(330),
  polyester: f(310),
  nylon: f(285),
  rayon: f(310),
  canvas: f(350),
  leather: f(280),
  acrylic: f(285),
  elastane: f(300),
  'non-woven': f(265),
  shell: f(280),
};

/** What is not in the list, or not told, may be the most delicate of all. */
const scorch: Readonly<Record<Fabric, Temperature>> = {
  ...known,
  other: Object.values(known).toSorted((a, b) => a - b)[0] ?? known['non-woven'],
};

/** Above it the dye of a polyester may rise into the print. Blends are pressed a little hotter as a rule, and watched. */
const migrates: Partial<Record<Fabric, Temperature>> = { polyester: f(285), elastane: f(285), blend: f(305) };
/** Below it hot-melt powder hardly softens. */
const MELTS = f(225);
const PRESS = { least: 5, most: 40 };
const CURE = { least: 60, most: 420 };
/** Powder cures between these in an oven, and under a platen that hovers, which has to be hotter. */
const CURES: Readonly<Record<Curer, { least: Temperature; most: Temperature }>> = {
  press: { least: f(270), most: f(350) },
  oven: { least: f(215), most: f(330) },
  line: { least: f(215), most: f(330) },
};
const CLEAR = { least: fromMm(3), most: fromMm(20) };

/** What a figure would be, had it been meant in the other unit, if that is where presses work; else `null`. */
function meantOtherwise(value: Temperature, least: Temperature, most: Temperature): Temperature | null {
  const degreesC = value / 10;
  const asF = f(degreesC);
  if (value > most && asF >= least && asF <= most) return asF;
  const asC = fromDegrees(degreesC * 1.8 + 32, 'C');
  return value < least && asC >= least && asC <= most ? asC : null;
}

/** What to ask about a press recipe; empty if nothing is out of the ordinary. */
export function questionPress(fabric: Fabric, values: PressValues): Question[] {
  const questions: Question[] = [];
  const { temperature, seconds, prePress, secondPress, wait } = values;
  const most = scorch[fabric];
  const cool = migrates[fabric];
  const meant = meantOtherwise(temperature, MELTS, most);
  if (meant !== null) questions.push({ code: 'other-unit', meant });
  else if (temperature > most) questions.push({ code: 'scorches', most });
  else if (temperature < MELTS) questions.push({ code: 'melts-nothing', least: MELTS });
  else if (cool !== undefined && temperature > cool) questions.push({ code: 'dye-migrates', most: cool });
  const times = [seconds.small, seconds.large];
  const limits = { least: asSeconds(PRESS.least), most: asSeconds(PRESS.most) };
  if (times.some((time) => time < PRESS.least)) questions.push({ code: 'too-short', ...limits });
  if (times.some((time) => time > PRESS.most)) questions.push({ code: 'too-long', ...limits });
  if (prePress > 20) questions.push({ code: 'pre-press-long', most: asSeconds(20) });
  if (secondPress > 30) questions.push({ code: 'second-press-long', most: asSeconds(30) });
  if (wait > 300) questions.push({ code: 'wait-long', most: asSeconds(300) });
  return questions;
}

/** What to ask about a curing recipe. */
export function questionCure(by: Curer, { temperature, seconds, clear }: CureValues): Question[] {
  const questions: Question[] = [];
  const { least, most } = CURES[by];
  const meant = meantOtherwise(temperature, least, most);
  if (meant !== null) questions.push({ code: 'other-unit', meant });
  else if (temperature > most) questions.push({ code: 'scorches', most });
  else if (temperature < least) questions.push({ code: 'melts-nothing', least });
  const limits = { least: asSeconds(CURE.least), most: asSeconds(CURE.most) };
  if (seconds < CURE.least) questions.push({ code: 'too-short', ...limits });
  if (seconds > CURE.most) questions.push({ code: 'too-long', ...limits });
  if (by === 'press' && (clear < CLEAR.least || clear > CLEAR.most)) {
    questions.push({ code: 'clear-off', ...CLEAR });
  }
  return questions;
}

/** Fabrics that take harm from heat, and what to do about it before the first garment. */
export type FabricCaution = 'try-on-scrap' | 'dye-migrates' | 'coated' | 'shrinks' | 'melts' | 'moisture';

const cautions: Readonly<Record<Fabric, readonly FabricCaution[]>> = {
  cotton: [],
  blend: ['dye-migrates'],
  polyester: ['dye-migrates', 'try-on-scrap'],
  nylon: ['try-on-scrap', 'coated'],
  rayon: ['shrinks', 'try-on-scrap'],
  canvas: ['moisture'],
  leather: ['shrinks', 'try-on-scrap'],
  acrylic: ['melts', 'try-on-scrap'],
  elastane: ['dye-migrates', 'try-on-scrap'],
  'non-woven': ['melts', 'try-on-scrap'],
  shell: ['coated', 'try-on-scrap'],
  other: ['try-on-scrap'],
};

export const cautionsFor = (fabric: Fabric): readonly FabricCaution[] => cautions[fabric];
