import {
  type Curer,
  type CureValues,
  firstOf,
  type Hours,
  type Oven,
  type Peel,
  type Person,
  type Press,
  type PressValues,
  type Printer,
  type Settings,
  type Station,
} from '../model';
import {
  asSeconds,
  type Fabric,
  fromDegrees,
  fromMinutes,
  fromMm,
  fromUnit,
  type Micrometres,
  type Seconds,
} from '../units';

interface FabricValues {
  readonly degreesF: number;
  readonly pressure: PressValues['pressure'];
  readonly small: number;
  readonly large: number;
  readonly prePress: number;
  readonly secondPress: number;
  readonly cover: PressValues['cover'];
}

/**
 * Values for hot-peel film to start with, common practice without a source: the film maker's data sheet replaces them. Whole
 * degrees Fahrenheit and seconds.
 */
const byFabric: Readonly<Record<Fabric, FabricValues>> = {
  cotton: {
    degreesF: 315,
    pressure: 'medium',
    small: 12,
    large: 15,
    prePress: 5,
    secondPress: 8,
    cover: 'paper',
  },
  blend: {
    degreesF: 300,
    pressure: 'medium',
    small: 12,
    large: 15,
    prePress: 5,
    secondPress: 8,
    cover: 'paper',
  },
  polyester: {
    degreesF: 270,
    pressure: 'medium',
    small: 10,
    large: 12,
    prePress: 3,
    secondPress: 5,
    cover: 'paper',
  },
  nylon: {
    degreesF: 260,
    pressure: 'light',
    small: 10,
    large: 12,
    prePress: 3,
    secondPress: 5,
    cover: 'silicone',
  },
  rayon: {
    degreesF: 280,
    pressure: 'light',
    small: 10,
    large: 12,
    prePress: 3,
    secondPress: 5,
    cover: 'paper',
  },
  canvas: {
    degreesF: 320,
    pressure: 'firm',
    small: 15,
    large: 18,
    prePress: 8,
    secondPress: 10,
    cover: 'paper',
  },
  leather: {
    degreesF: 255,
    pressure: 'light',
    small: 8,
    large: 10,
    prePress: 0,
    secondPress: 5,
    cover: 'silicone',
  },
  acrylic: {
    degreesF: 265,
    pressure: 'light',
    small: 10,
    large: 12,
    prePress: 3,
    secondPress: 5,
    cover: 'paper',
  },
  elastane: {
    degreesF: 275,
    pressure: 'light',
    small: 10,
    large: 12,
    prePress: 3,
    secondPress: 5,
    cover: 'paper',
  },
  'non-woven': {
    degreesF: 245,
    pressure: 'light',
    small: 6,
    large: 8,
    prePress: 0,
    secondPress: 0,
    cover: 'silicone',
  },
  shell: {
    degreesF: 260,
    pressure: 'light',
    small: 8,
    large: 10,
    prePress: 0,
    secondPress: 5,
    cover: 'silicone',
  },
  other: {
    degreesF: 255,
    pressure: 'light',
    small: 10,
    large: 12,
    prePress: 3,
    secondPress: 5,
    cover: 'paper',
  },
};

/** Seconds before a film is peeled that is still lukewarm to the hand (common practice, no source). */
const WARM = 10;
/** Seconds until a print is cool to the touch, and until it is on what is thick and holds its heat (common practice, no source). */
const COOL = 120;
const COOL_WHEN_THICK = 180;
const thick: ReadonlySet<Fabric> = new Set(['canvas', 'leather', 'shell', 'other']);

function waitFor(peel: Peel, fabric: Fabric): number {
  switch (peel) {
    case 'hot':
      return 0;
    case 'warm':
      return WARM;
    case 'cold':
      return thick.has(fabric) ? COOL_WHEN_THICK : COOL;
  }
}

/** The press recipe that a shop begins with. */
export function startingPress(peel: Peel, fabric: Fabric): PressValues {
  const { degreesF, pressure, small, large, prePress, secondPress, cover } = byFabric[fabric];
  return {
    temperature: fromDegrees(degreesF, 'F'),
    pressure,
    seconds: { small: asSeconds(small), large: asSeconds(large) },
    wait: asSeconds(waitFor(peel, fabric)),
    prePress: asSeconds(prePress),
    secondPress: asSeconds(secondPress),
    cover,
  };
}

/** The curing recipe that a shop begins with (common practice, no source); powder and film makers' sheets replace it. */
export function startingCure(by: Curer): CureValues {
  const values = {
    press: { degreesF: 315, seconds: 150, clear: 8 },
    oven: { degreesF: 250, seconds: 150, clear: 0 },
    line: { degreesF: 250, seconds: 180, clear: 0 },
  }[by];
  return {
    temperature: fromDegrees(values.degreesF, 'F'),
    seconds: asSeconds(values.seconds),
    clear: fromMm(values.clear),
  };
}

/** How long a transfer of a size is pressed at a station. */
export const pressSeconds = (
  { seconds }: Pick<PressValues, 'seconds'>,
  size: { readonly width: Micrometres; readonly height: Micrometres },
  { large }: Pick<Station, 'large'>,
): Seconds => (Math.max(size.width, size.height) >= large ? seconds.large : seconds.small);

/** Monday to Friday from 8 to 5 with half an hour at noon (common practice, no source). */
const startingHours: Hours = {
  week: Array.from({ length: 7 }, (_, day) =>
    day < 5
      ? [
          { from: '08:00', to: '12:00' },
          { from: '12:30', to: '17:00' },
        ]
      : [],
  ),
  closed: [],
};

/** A press for shirts, as it is sold in each unit (common practice, no source). */
const platens = {
  mm: { width: fromMm(400), length: fromMm(500) },
  in: { width: fromUnit(16, 'in'), length: fromUnit(20, 'in') },
} as const;

/** From where a transfer is pressed longer (common practice, no source). */
const larges = { mm: fromMm(200), in: fromUnit(8, 'in') } as const;

/** A desktop printer of which nothing is told yet: how runs reach it is asked, since no shop is like another in that. */
export const startingPrinter = (id: Printer['id'], unit: Settings['unit'] = 'mm'): Printer => ({
  id,
  name: '',
  perHour: unit === 'mm' ? fromUnit(2.5, 'm') : fromUnit(8, 'ft'),
  warmUp: fromMinutes(4),
  check: fromMinutes(2),
  sends: null,
  feedsBack: null,
  firstEnd: 'lead',
  inkUp: 'mirrored',
  feed: 1,
  mirrored: false,
});

export const startingHeatPress = (id: Press['id'], unit: Settings['unit'] = 'mm'): Press => ({
  id,
  name: '',
  platen: platens[unit],
  caps: false,
  warmUp: fromMinutes(12),
  rise: asSeconds(3),
  fall: asSeconds(8),
});

export const startingOven = (id: Oven['id'], unit: Settings['unit'] = 'mm'): Oven => ({
  id,
  name: '',
  bed: platens[unit],
});

/** Someone who is there whenever the shop is open. */
export const startingPerson = (id: Person['id']): Person => ({ id, name: '', hours: null });

/**
 * A desktop printer, one person and one press that also cures (common practice, no source).
 */
export const startingStation = (
  temperature: Station['temperature'],
  unit: Settings['unit'] = 'mm',
): Station => ({
  temperature,
  cutApart: 'after-cure',
  printers: [startingPrinter(firstOf('printer'), unit)],
  presses: [startingHeatPress(firstOf('press'), unit)],
  large: larges[unit],
  oneClosing: true,
  curer: 'press',
  ovens: [startingOven(firstOf('oven'), unit)],
  people: [startingPerson(firstOf('person'))],
  wetLimit: fromMinutes(20),
  powderLimit: fromMinutes(30),
  trays: 3,
  handling: {
    cutOff: asSeconds(30),
    powder: asSeconds(75),
    load: asSeconds(20),
    loose: asSeconds(8),
    cutApart: asSeconds(5),
    cutMetre: asSeconds(10),
    dress: asSeconds(15),
    place: asSeconds(8),
    pack: asSeconds(15),
  },
  allowance: 0.12,
  hours: startingHours,
});
