import { consumptionOf } from '../costing';
import {
  addFilm,
  addGarment,
  addSupply,
  archiveItem,
  type BookDraft,
  type EditContext,
  enter,
} from '../editing';
import { asInstant, type Closing, type Settings, type Stage } from '../model';
import { sumsOf } from '../stock';
import { asMicrolitres, asMilligrams, asSeconds, fromUnit, type LocalDate, seededRandom, um } from '../units';

/** What the demo's stock and its spoiled copies are called. */
export interface DemoStockWords {
  readonly colour: string;
  readonly white: string;
  readonly powder: string;
  readonly order: { readonly white: string; readonly powder: string };
  readonly usedRoll: Readonly<Record<Settings['unit'], string>>;
  readonly run: (number: number) => string;
  readonly tee: { readonly style: string; readonly colour: string };
  readonly reasons: Readonly<Record<'crooked' | 'grainy' | 'lifted' | 'banding' | 'scorched', string>>;
}

const RUNS = 26;
const SEED = 7;
const WEEKS_BACK_DAYS = 62;
/** How often the film room was a little damp. */
const DAMP = 0.62;

const stages: Readonly<Record<keyof DemoStockWords['reasons'], Stage>> = {
  crooked: 'press',
  grainy: 'cure',
  lifted: 'press',
  banding: 'print',
  scorched: 'press',
};

/**
 * Adds what the demo shop has in stock, and the weeks before its day: invented closed runs, drawn from a seeded generator, with the
 * ledger that goes with them. Its printer takes more white and powder than the rates to start with say.
 */
export function addDemoWeeks(
  draft: BookDraft,
  { words, dayFrom }: { readonly words: DemoStockWords; readonly dayFrom: (days: number) => LocalDate },
  context: EditContext,
): void {
  const { shop } = draft.settings;
  const [present] = Object.values(draft.film);
  const [first] = Object.values(draft.order);
  if (!shop || present?.kind !== 'roll' || !first) return;
  const usedRoll = words.usedRoll[shop.unit];
  const random = seededRandom(SEED);
  const between = (least: number, most: number) => least + (most - least) * random();
  const at = (daysAgo: number, hour: number): EditContext => {
    const day = new Date(Date.parse(context.now) - daysAgo * 86_400_000);
    day.setUTCHours(hour, Math.floor(between(0, 59)), 0, 0);
    return { newId: context.newId, now: asInstant(day) };
  };
  const begin = at(WEEKS_BACK_DAYS + 1, 8);
  const box = (lot: string, opened: number, reorder: number | null, order = '') => ({
    lot,
    bestBefore: dayFrom(150),
    opened: dayFrom(opened),
    reorder,
    order,
  });
  const supplies = {
    white: addSupply(
      draft,
      { kind: 'white', name: words.white, ...box('W-118', -9, 900_000, words.order.white) },
      1_500_000,
      begin,
    ),
    colour: addSupply(
      draft,
      { kind: 'colour', name: words.colour, ...box('C-052', -20, 300_000) },
      1_000_000,
      begin,
    ),
    powder: addSupply(
      draft,
      { kind: 'powder', name: words.powder, ...box('P-77', -15, 4_000_000, words.order.powder) },
      5_000_000,
      begin,
    ),
  };
  const { style, colour } = words.tee;
  for (const [size, there, wanted] of [
    ['S', 9, 3],
    ['M', 4, 6],
    ['L', 12, 0],
  ] as const) {
    const blank = { kind: 'blank', style, colour, shade: null, size } as const;
    const noBox = { lot: '', bestBefore: null, opened: null, reorder: 4, order: '' };
    addSupply(draft, { ...blank, name: `${style}, ${colour}, ${size}`, ...noBox }, there, begin);
    if (wanted > 0)
      addGarment(
        draft,
        first.id,
        { style, colour, shade: null, size, fabric: 'cotton', count: wanted },
        context,
      );
  }
  const { id: _, changed: __, ...fields } = present;
  const old = addFilm(draft, { ...fields, name: usedRoll, lengthLeft: fromUnit(100, 'm') }, begin);
  const buyBelow = { white: 400_000, colour: 250_000, powder: 1_200_000 };
  const bottle = { white: 1_000_000, colour: 500_000, powder: 3_000_000 };

  for (let index = 0; index < RUNS; index += 1) {
    const daysAgo = Math.round(WEEKS_BACK_DAYS - (index * (WEEKS_BACK_DAYS - 1)) / (RUNS - 1));
    const by = at(daysAgo, 15);
    const id = by.newId<'run'>();
    const copies = Math.round(between(34, 96));
    const copyArea = copies * between(7_000, 12_500);
    const plannedWaste = between(0.13, 0.2) - 0.04 * (index / RUNS);
    const planned = (copyArea / (1 - plannedWaste) / (present.width / 1000)) * 1000;
    const jammed = random() < 0.16 ? between(180_000, 520_000) : 0;
    const film = { planned: um(Math.round(planned)), actual: um(Math.round(planned + jammed)) };
    const coverage = { colour: copyArea * between(0.26, 0.4), white: copyArea * between(0.5, 0.66) };
    const rated = consumptionOf(coverage, shop.rates);
    const isMeasured = random() < 0.85;
    const used = {
      colour: isMeasured ? asMicrolitres(rated.colour * between(0.9, 1.02)) : null,
      white: isMeasured ? asMicrolitres(rated.white * between(1.08, 1.2)) : null,
      powder: isMeasured ? asMilligrams(rated.powder * between(1.14, 1.28)) : null,
    };
    const humidity = Math.round(100 * between(0.38, 0.7)) / 100;
    const spoiled = spoiledIn(copies, humidity, jammed > 0, words.reasons, random);
    const spans = Math.max(1, Math.round(film.planned / 460_000));
    const printer = asSeconds(360 + (film.planned / 2_500_000) * 3600);
    const hands = asSeconds(copies * 62 + spans * 135);
    const press = asSeconds(copies * 41 + spans * 165);
    draft.closing[id] = {
      id,
      name: words.run(index + 1),
      at: by.now,
      day: dayFrom(-daysAgo),
      film: { id: old, name: usedRoll, kind: 'roll', width: present.width },
      work: { copies, pressed: copies, spans, platenClosings: 2 * copies + spans, copyArea, coverage },
      planned: {
        film: film.planned,
        sheets: 0,
        ...rated,
        time: { printer, hands, press, oven: asSeconds(0) },
      },
      actual: {
        film: film.actual,
        sheets: 0,
        ...used,
        time: {
          printer: asSeconds(printer * between(1.02, 1.1)),
          hands: random() < 0.8 ? asSeconds(hands * between(1.0, 1.24)) : null,
          press: random() < 0.8 ? asSeconds(press * between(0.95, 1.15)) : null,
          oven: asSeconds(0),
        },
      },
      spoiled,
      lots: {
        film: index < 15 ? 'F-2207' : 'F-2231',
        colour: index < 12 ? 'C-047' : 'C-052',
        white: index < 9 ? 'W-109' : index < 20 ? 'W-113' : 'W-118',
        powder: index < 14 ? 'P-71' : 'P-77',
      },
      air: { temperature: Math.round(10 * between(20, 25)) / 10, humidity },
      earlier: [],
      notes: '',
      changed: by.now,
    };
    enter(draft, old, -film.planned, { kind: 'printed', run: id }, by);
    enter(draft, old, -(film.actual - film.planned), { kind: 'used', run: id }, by);
    for (const kind of ['white', 'colour', 'powder'] as const) {
      const left = sumsOf(draft.entry).get(supplies[kind]) ?? 0;
      if (left < buyBelow[kind])
        enter(draft, supplies[kind], bottle[kind], { kind: 'bought' }, at(daysAgo, 9));
      const amount = used[kind];
      if (amount !== null) enter(draft, supplies[kind], -amount, { kind: 'used', run: id }, by);
    }
  }
  archiveItem(draft, old, true);
}

/** Copies that came to nothing in a run: more of them are grainy when the air is damp. */
function spoiledIn(
  copies: number,
  humidity: number,
  jammed: boolean,
  reasons: DemoStockWords['reasons'],
  random: () => number,
): Closing['spoiled'] {
  const found: Closing['spoiled'] = [];
  const add = (reason: keyof DemoStockWords['reasons'], most: number) => {
    const count = Math.min(copies, 1 + Math.floor(random() * most));
    const stage = stages[reason];
    found.push({ stage, reason: reasons[reason], copies: count, garments: stage === 'press' ? count : 0 });
  };
  if (jammed) add('banding', 4);
  if (humidity > DAMP) add('grainy', 4);
  if (random() < 0.3) add('crooked', 2);
  if (random() < 0.14) add('lifted', 2);
  if (random() < 0.08) add('scorched', 1);
  return found;
}
