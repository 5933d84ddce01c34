import type { Costs, Heater, Rates, RunUse } from '../model';
import { asMilliMinor, asSeconds, type MilliMinor, sum } from '../units';
import { type Formula, type Term, worthOf } from './formula';

/** What a run costs, in the order in which it is told. */
const costKinds = [
  'film',
  'colour-ink',
  'white-ink',
  'powder',
  'maintenance',
  'printer-power',
  'oven-power',
  'press-power',
  'artwork',
  'printing',
  'cutting',
  'pressing',
  'packing',
  'garments',
  'replacements',
  'spoilage',
  'overhead',
] as const;

export type CostKind = (typeof costKinds)[number];

/** What a line is shared among transfers by. */
export type SharedBy = 'footprint' | 'ink' | 'time' | 'copies' | 'cost';

/** Why a line is nothing: the shop leaves it out, or what it is worked out from is not known. */
export type Gap = 'left-out' | 'no-times';

/** One kind of cost of a run before rounding. */
export interface Line {
  readonly kind: CostKind;
  readonly formula: Formula;
  /** The part that would be the same for any number of copies. */
  readonly fixed: Formula;
  readonly sharedBy: SharedBy;
  /** What each transfer takes of it; as long as the run's transfers. */
  readonly weights: readonly number[];
  readonly gap: Gap | null;
}

type Transfer = RunUse['transfers'][number];

const rooms = ['printing', 'cutting', 'pressing', 'packing'] as const;

const footprint = ({ copies, footprint: own }: Transfer): number => copies * own;
const ink = ({ copies, white, colour }: Transfer): number => copies * Math.max(white, colour);

/** A line at a rate that the shop may have left out. */
function priced(
  rate: MilliMinor | null,
  formula: (rate: MilliMinor) => Formula,
  fixed: (rate: MilliMinor) => Formula = () => [],
): Pick<Line, 'formula' | 'fixed' | 'gap'> {
  if (rate === null) return { formula: [], fixed: [], gap: 'left-out' };
  return { formula: formula(rate), fixed: fixed(rate), gap: null };
}

function filmLine({ film, transfers }: RunUse, { filmBy }: Costs): Line {
  const term: Term =
    film.kind === 'roll'
      ? [
          { of: 'length', value: film.length },
          { of: 'length-price', ...film.price },
        ]
      : [
          { of: 'count', what: 'sheets', value: film.sheets },
          { of: 'each', price: film.price },
        ];
  return {
    kind: 'film',
    formula: [term],
    fixed: [],
    sharedBy: filmBy,
    weights: transfers.map(filmBy === 'ink' ? ink : footprint),
    gap: null,
  };
}

function inkLines({ transfers }: RunUse, costs: Costs, rates: Rates): Line[] {
  const colours = transfers.map(({ copies, colour }) => copies * colour);
  const whites = transfers.map(({ copies, white }) => copies * white);
  const { day, runsADay, cleaning, cleanings, start } = costs.maintenance;
  const inks = [costs.colourInk, costs.whiteInk].filter((price) => price !== null);
  const mean = inks.length === 0 ? null : asMilliMinor(inks.reduce((a, b) => a + b, 0) / inks.length);
  const starts = (value: number, price: MilliMinor | null): Formula =>
    price === null
      ? []
      : [
          [
            { of: 'volume', value, for: 'start' },
            { of: 'volume-price', price },
          ],
        ];
  const maintenance = (price: MilliMinor): Formula => [
    [
      { of: 'volume', value: day, for: 'day' },
      { of: 'share', value: 1 / runsADay },
      { of: 'volume-price', price },
    ],
    [
      { of: 'volume', value: cleanings * cleaning, for: 'cleanings' },
      { of: 'volume-price', price },
    ],
    ...starts(start.colour, costs.colourInk),
    ...starts(start.white, costs.whiteInk),
  ];
  return [
    {
      kind: 'colour-ink',
      sharedBy: 'ink',
      weights: colours,
      ...priced(costs.colourInk, (price) => [
        [
          { of: 'area', value: sum(colours) },
          { of: 'volume-rate', value: rates.colour },
          { of: 'volume-price', price },
        ],
      ]),
    },
    {
      kind: 'white-ink',
      sharedBy: 'ink',
      weights: whites,
      ...priced(costs.whiteInk, (price) => [
        [
          { of: 'area', value: sum(whites) },
          { of: 'volume-rate', value: rates.white },
          { of: 'volume-price', price },
        ],
      ]),
    },
    {
      kind: 'powder',
      sharedBy: 'ink',
      weights: whites,
      ...priced(costs.powder, (price) => [
        [
          { of: 'area', value: sum(whites) },
          { of: 'mass-rate', value: rates.powder },
          { of: 'mass-price', price },
        ],
      ]),
    },
    {
      kind: 'maintenance',
      sharedBy: 'footprint',
      weights: transfers.map(footprint),
      ...priced(mean, maintenance, maintenance),
    },
  ];
}

/** Electricity of each machine that the run needs. */
function powerLines({ machines, transfers }: RunUse, { energy, watts }: Costs): Line[] {
  const line = (kind: CostKind, by: Heater, weights: readonly number[], sharedBy: SharedBy): Line[] => {
    if (machines === null) return [{ kind, formula: [], fixed: [], sharedBy, weights, gap: 'no-times' }];
    const { on, warmUp } = machines[by];
    if (on === 0) return [];
    const during =
      (value: typeof on) =>
      (price: MilliMinor): Formula => [
        [
          { of: 'power', value: watts[by], by },
          { of: 'time', value, at: by },
          { of: 'energy-price', price },
        ],
      ];
    return [{ kind, sharedBy, weights, ...priced(energy, during(on), during(warmUp)) }];
  };
  return [
    ...line('printer-power', 'printer', transfers.map(footprint), 'footprint'),
    ...line('oven-power', 'oven', transfers.map(footprint), 'footprint'),
    ...line(
      'press-power',
      'press',
      transfers.map(({ pressed }) => pressed),
      'time',
    ),
  ];
}

/** Work on artwork and orders before anything is printed. */
function artworkLine(use: RunUse, { labour, artworkTime }: Costs): Line {
  const orders = use.orders.reduce((sum, { share }) => sum + share, 0);
  const designs = use.orders.reduce((sum, { share, newDesigns }) => sum + share * newDesigns, 0);
  const formula = (price: MilliMinor): Formula => [
    [
      { of: 'count', what: 'orders', value: orders },
      { of: 'time', value: artworkTime.order, at: 'artwork' },
      { of: 'time-price', price },
    ],
    [
      { of: 'count', what: 'designs', value: designs },
      { of: 'time', value: artworkTime.design, at: 'artwork' },
      { of: 'time-price', price },
    ],
  ];
  const ofOrder = ({ share, newDesigns }: RunUse['orders'][number]) =>
    share * (artworkTime.order + newDesigns * artworkTime.design);
  return {
    kind: 'artwork',
    sharedBy: 'copies',
    weights: byCopies(use, ofOrder),
    ...priced(labour.artwork, formula, formula),
  };
}

/** What each order has, given to its transfers by their copies. */
function byCopies({ transfers, orders }: RunUse, of: (order: RunUse['orders'][number]) => number): number[] {
  const copies = new Map<string, number>();
  for (const { order, copies: own } of transfers) copies.set(order, (copies.get(order) ?? 0) + own);
  const amounts = new Map<string, number>(orders.map((order) => [order.id, of(order)]));
  return transfers.map(
    ({ order, copies: own }) => ((amounts.get(order) ?? 0) * own) / Math.max(1, copies.get(order) ?? 1),
  );
}

function labourLines(use: RunUse, costs: Costs): Line[] {
  const { machines, transfers } = use;
  const lines = rooms.map((room): Line => {
    const weights = transfers.map(({ seconds }) => seconds[room]);
    if (machines === null) {
      return { kind: room, formula: [], fixed: [], sharedBy: 'time', weights, gap: 'no-times' };
    }
    const ready = room === 'printing' ? machines.ready : 0;
    const during =
      (time: number) =>
      (price: MilliMinor): Formula => [
        [
          { of: 'time', value: asSeconds(time), at: room },
          { of: 'time-price', price },
        ],
      ];
    const all = weights.reduce((sum, time) => sum + time, ready);
    return {
      kind: room,
      sharedBy: 'time',
      weights,
      ...priced(costs.labour[room], during(all), during(ready)),
    };
  });
  return [artworkLine(use, costs), ...lines];
}

/** Garments, and those that replace what was spoiled on the run. */
function garmentLines(use: RunUse): Line[] {
  const garments: Term[] = [];
  const replaced: Term[] = [];
  const costOf = new Map<string, { garments: number; replaced: number }>();
  for (const order of use.orders) {
    const own = { garments: 0, replaced: 0 };
    for (const { count, price } of order.supplied ? [] : order.garments) {
      if (price === null || count === 0) continue;
      const term: Term = [
        { of: 'count', what: 'garments', value: count },
        { of: 'each', price },
        ...(order.share < 1 ? [{ of: 'share', value: order.share } as const] : []),
      ];
      garments.push(term);
      own.garments += worthOf([term]);
    }
    if (order.replaced > 0 && order.replacement !== null) {
      const term: Term = [
        { of: 'count', what: 'garments', value: order.replaced },
        { of: 'each', price: order.replacement },
      ];
      replaced.push(term);
      own.replaced += worthOf([term]);
    }
    costOf.set(order.id, own);
  }
  const line = (kind: 'garments' | 'replacements', formula: Formula): Line => ({
    kind,
    formula,
    fixed: [],
    sharedBy: 'copies',
    weights: byCopies(use, ({ id }) => costOf.get(id)?.[kind === 'garments' ? 'garments' : 'replaced'] ?? 0),
    gap: null,
  });
  return [
    ...(garments.length > 0 ? [line('garments', garments)] : []),
    ...(replaced.length > 0 ? [line('replacements', replaced)] : []),
  ];
}

const exactOf = (lines: readonly Line[]): number =>
  lines.reduce((sum, { formula }) => sum + worthOf(formula), 0);

/** A line's part of each transfer before rounding; by footprint where nothing else tells, equal where nothing has one. */
export function partsOf(line: Line, { transfers }: RunUse): number[] {
  const all = worthOf(line.formula);
  for (const weights of [line.weights, transfers.map(footprint), transfers.map(({ copies }) => copies)]) {
    const sum = weights.reduce((total, weight) => total + weight, 0);
    if (sum > 0) return weights.map((weight) => (all * weight) / sum);
  }
  return transfers.map(() => 0);
}

/** Each transfer's part of some lines together. */
function partsTogether(lines: readonly Line[], use: RunUse): number[] {
  const parts = lines.map((line) => partsOf(line, use));
  return use.transfers.map((_, at) => parts.reduce((sum, own) => sum + (own[at] ?? 0), 0));
}

function overheadLine(use: RunUse, { overhead, artworkTime }: Costs, others: readonly Line[]): Line {
  if (overhead.kind === 'share') {
    const formula: Formula = [
      [
        { of: 'share', value: overhead.share },
        { of: 'money', value: exactOf(others) },
      ],
    ];
    return {
      kind: 'overhead',
      formula,
      fixed: [],
      sharedBy: 'cost',
      weights: partsTogether(others, use),
      gap: null,
    };
  }
  const artwork = byCopies(
    use,
    ({ share, newDesigns }) => share * (artworkTime.order + newDesigns * artworkTime.design),
  );
  const weights = use.transfers.map(({ seconds }, at) =>
    rooms.reduce((sum, room) => sum + seconds[room], artwork[at] ?? 0),
  );
  if (use.machines === null) {
    return { kind: 'overhead', formula: [], fixed: [], sharedBy: 'time', weights, gap: 'no-times' };
  }
  const before = artwork.reduce((sum, time) => sum + time, use.machines.ready);
  const all = weights.reduce((sum, time) => sum + time, use.machines.ready);
  const during =
    (time: number) =>
    (price: MilliMinor): Formula => [
      [
        { of: 'time', value: asSeconds(time), at: 'all' },
        { of: 'time-price', price },
      ],
    ];
  return {
    kind: 'overhead',
    sharedBy: 'time',
    weights,
    ...priced(overhead.rate, during(all), during(before)),
  };
}

/**
 * All that a run costs, before rounding. Overhead by the hour is charged on hands' time, the direct labour-hour base of cost
 * accounting (C. T. Horngren, S. M. Datar and M. V. Rajan, Cost Accounting, from memory).
 * @param closed what was spoiled is known: nothing is allowed for it
 */
export function costLines(use: RunUse, costs: Costs, rates: Rates, closed: boolean): Line[] {
  const direct = [
    filmLine(use, costs),
    ...inkLines(use, costs, rates),
    ...powerLines(use, costs),
    ...labourLines(use, costs),
    ...garmentLines(use),
  ];
  const spoilage: Line = {
    kind: 'spoilage',
    formula: [
      [
        { of: 'share', value: costs.spoilage },
        { of: 'money', value: exactOf(direct) },
      ],
    ],
    fixed: [],
    sharedBy: 'cost',
    weights: partsTogether(direct, use),
    gap: null,
  };
  const before = closed || costs.spoilage === 0 ? direct : [...direct, spoilage];
  return [...before, overheadLine(use, costs, before)];
}
