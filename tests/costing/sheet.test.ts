import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CostKind, type CostShare, copyCosts, costSheet, worthOf } from '../../src/costing';
import type { Costs, Id, Rates, RunUse } from '../../src/model';
import { asMilliMinor, asMinor, asSeconds, fromMm, fromUnit, fromVolume } from '../../src/units';
import { anyCosts, anyUse, costs, rates } from './uses';

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Every level of a sheet with its parts. */
function levels(sheet: ReturnType<typeof costSheet>): [CostShare, readonly CostShare[]][] {
  const whole = {
    amount: sheet.amount,
    lines: sheet.lines.map(({ amount }) => amount),
    exact: sheet.lines.map(({ exact }) => exact),
  };
  return [
    [whole, sheet.orders],
    ...sheet.orders.flatMap((order): [CostShare, readonly CostShare[]][] => [
      [order, order.transfers],
      ...order.transfers.map((transfer): [CostShare, readonly CostShare[]] => [
        transfer,
        copyCosts(transfer),
      ]),
    ]),
  ];
}

describe('a cost sheet', () => {
  it('sums exactly at every level, by line and in all, and no part is below zero', () => {
    fc.assert(
      fc.property(anyUse, anyCosts, fc.boolean(), (use, own, closed) => {
        const sheet = costSheet(use, own, rates, closed);
        expect(sheet.amount).toBe(Math.round(sum(sheet.lines.map(({ exact }) => exact))));
        for (const [whole, parts] of levels(sheet)) {
          expect(sum(whole.lines)).toBe(whole.amount);
          expect(sum(parts.map(({ amount }) => amount))).toBe(whole.amount);
          whole.lines.forEach((amount, line) => {
            expect(amount).toBeGreaterThanOrEqual(0);
            expect(sum(parts.map(({ lines }) => lines[line] ?? 0))).toBe(amount);
          });
        }
        for (const { formula, exact } of sheet.lines) expect(worthOf(formula)).toBe(exact);
      }),
      { numRuns: 200 },
    );
  });

  it('does not depend on the order of transfers', () => {
    fc.assert(
      fc.property(anyUse, anyCosts, (use, own) => {
        const other = { ...use, transfers: [...use.transfers].reverse(), orders: [...use.orders].reverse() };
        expect(costSheet(other, own, rates)).toEqual(costSheet(use, own, rates));
      }),
    );
  });

  it('shares film by ink as by footprint where coverage is uniform', () => {
    fc.assert(
      fc.property(anyUse, fc.double({ min: 0.01, max: 1, noNaN: true }), (found, coverage) => {
        const transfers = found.transfers.map((own) => {
          const area = own.footprint * coverage;
          return { ...own, colour: area / 2, white: area };
        });
        const use = { ...found, transfers };
        const by = (filmBy: Costs['filmBy']) => costSheet(use, { ...costs, filmBy }, rates).orders;
        by('ink').forEach((order, at) => {
          const other = by('footprint')[at];
          order.transfers.forEach(({ exact }, which) => {
            expect(exact[0]).toBeCloseTo(other?.transfers[which]?.exact[0] ?? Number.NaN, 6);
          });
        });
      }),
    );
  });

  it('costs copies of a transfer alike, but for units that cannot be parted', () => {
    fc.assert(
      fc.property(anyUse, (use) => {
        for (const order of costSheet(use, costs, rates).orders) {
          for (const transfer of order.transfers) {
            const amounts = copyCosts(transfer).map(({ amount }) => amount);
            expect(Math.max(...amounts) - Math.min(...amounts)).toBeLessThanOrEqual(2);
          }
        }
      }),
    );
  });
});

/** Two orders on 4.87 m of film: ten fronts of 200 x 200 mm, printed all over, and twenty tags of 100 x 50 mm, printed half. */
const use: RunUse = {
  film: { kind: 'roll', length: fromMm(4870), price: { amount: asMinor(840), per: fromUnit(1, 'm') } },
  transfers: [
    {
      id: 'front' as Id<'transfer'>,
      order: 'a' as Id<'order'>,
      copies: 10,
      footprint: 40_000,
      colour: 40_000,
      white: 40_000,
      assumed: null,
      seconds: {
        printing: asSeconds(600),
        cutting: asSeconds(100),
        pressing: asSeconds(900),
        packing: asSeconds(180),
      },
      pressed: asSeconds(900),
    },
    {
      id: 'tag' as Id<'transfer'>,
      order: 'b' as Id<'order'>,
      copies: 20,
      footprint: 5000,
      colour: 1250,
      white: 2500,
      assumed: null,
      seconds: {
        printing: asSeconds(120),
        cutting: asSeconds(200),
        pressing: asSeconds(0),
        packing: asSeconds(60),
      },
      pressed: asSeconds(0),
    },
  ],
  machines: {
    printer: { on: asSeconds(7200), warmUp: asSeconds(240) },
    oven: { on: asSeconds(0), warmUp: asSeconds(0) },
    press: { on: asSeconds(3600), warmUp: asSeconds(720) },
    ready: asSeconds(120),
  },
  orders: [
    {
      id: 'a' as Id<'order'>,
      share: 1,
      newDesigns: 1,
      garments: [{ count: 10, price: asMinor(450) }],
      replaced: 1,
      replacement: asMinor(450),
      supplied: false,
    },
    {
      id: 'b' as Id<'order'>,
      share: 0.5,
      newDesigns: 0,
      garments: [{ count: 20, price: asMinor(300) }],
      replaced: 0,
      replacement: null,
      supplied: true,
    },
  ],
};
const dollars = (amount: number) => asMilliMinor(amount * 100_000);
const plain: Costs = {
  ...costs,
  colourInk: dollars(150),
  whiteInk: dollars(160),
  powder: dollars(35),
  energy: dollars(0.2),
  labour: {
    artwork: dollars(18),
    printing: dollars(18),
    cutting: dollars(18),
    pressing: dollars(18),
    packing: dollars(18),
  },
  spoilage: 0.03,
  overhead: { kind: 'hour', rate: dollars(6) },
};
const byRate = { colour: 9000, white: 14_000, powder: 100_000 } as Rates;

describe('a run worked by hand', () => {
  const sheet = costSheet(use, plain, byRate);
  const exact = (kind: CostKind) => sheet.lines.find((line) => line.kind === kind)?.exact;
  // Colour 10 x 0.04 + 20 x 0.00125 = 0.425 m2, white 10 x 0.04 + 20 x 0.0025 = 0.45 m2. Direct costs:
  // 4090.8 + 57.375 + 100.8 + 157.5 + 93 + 6 + 28 + 345 + 420 + 150 + 450 + 120 + 4500 + 450 = 10968.475 cents.
  it.each<[CostKind, string, number]>([
    ['film', '4.87 m x $8.40', 4090.8],
    ['colour-ink', '0.425 m2 x 9 ml x $150 a litre', 57.375],
    ['white-ink', '0.45 m2 x 14 ml x $160 a litre', 100.8],
    ['powder', '0.45 m2 x 100 g x $35 a kilogram', 157.5],
    ['maintenance', '(6 ml / 2 runs + 1 x 3 ml) x $155 a litre', 93],
    ['printer-power', '150 W x 2 h x $0.20', 6],
    ['press-power', '1400 W x 1 h x $0.20', 28],
    ['artwork', '(1.5 orders x 180 s + 1 design x 420 s) x $18', 345],
    ['printing', '(600 + 120 + 120) s x $18', 420],
    ['cutting', '300 s x $18', 150],
    ['pressing', '900 s x $18', 450],
    ['packing', '240 s x $18', 120],
    ['garments', '10 x $4.50, the customer brings the others', 4500],
    ['replacements', '1 x $4.50', 450],
    ['spoilage', '3% of $109.68475', 329.05425],
    ['overhead', '(690 artwork + 840 + 300 + 900 + 240) s x $6', 495],
  ])('%s: %s', (kind, _, cents) => {
    expect(exact(kind)).toBeCloseTo(cents, 9);
  });

  it('counts the ink that each run takes to start, by the ink it is', () => {
    const start = { colour: fromVolume(2, 'ml'), white: fromVolume(3, 'ml') };
    const costs = { ...plain, maintenance: { ...plain.maintenance, start } };
    const upkeep = (own: Costs) =>
      costSheet(use, own, byRate).lines.find(({ kind }) => kind === 'maintenance')?.exact;
    // 93 + 2 ml x $150 a litre + 3 ml x $160 a litre.
    expect(upkeep(costs)).toBeCloseTo(93 + 30 + 48, 9);
    // An ink without a price is left out: all that is known is $160 a litre.
    expect(upkeep({ ...costs, colourInk: null })).toBeCloseTo(6 * 16 + 48, 9);
  });

  it('has no line for a machine that is not used', () => {
    expect(exact('oven-power')).toBeUndefined();
  });

  it('comes to $117.93, of which film by footprint falls 4 to 1 on the orders', () => {
    expect(sheet.amount).toBe(11_793);
    const [a, b] = sheet.orders;
    expect(a?.exact[0]).toBeCloseTo(3272.64, 9);
    expect(b?.exact[0]).toBeCloseTo(818.16, 9);
    expect((a?.amount ?? 0) + (b?.amount ?? 0)).toBe(11_793);
  });

  it('allows nothing for spoilage once it is closed', () => {
    const closed = costSheet(use, plain, byRate, true);
    expect(closed.lines.some(({ kind }) => kind === 'spoilage')).toBe(false);
    expect(closed.amount).toBe(Math.round(10_968.475 + 495));
  });

  it('says what is left out and what is not known, and counts on', () => {
    const left = costSheet({ ...use, machines: null }, { ...plain, powder: null }, byRate);
    const gaps = left.lines.flatMap(({ kind, gap }) => (gap ? [[kind, gap]] : []));
    expect(gaps).toEqual([
      ['powder', 'left-out'],
      ['printer-power', 'no-times'],
      ['oven-power', 'no-times'],
      ['press-power', 'no-times'],
      ['printing', 'no-times'],
      ['cutting', 'no-times'],
      ['pressing', 'no-times'],
      ['packing', 'no-times'],
      ['overhead', 'no-times'],
    ]);
  });

  it('costs nothing without copies', () => {
    expect(costSheet({ ...use, transfers: [] }, plain, byRate)).toEqual({ amount: 0, lines: [], orders: [] });
  });

  it('counts sheets by the sheet, and overhead as a share of all else', () => {
    const film = { kind: 'sheets' as const, sheets: 7, price: asMinor(85) };
    const overhead = { kind: 'share' as const, share: 0.1 };
    const other = costSheet({ ...use, film }, { ...plain, overhead, spoilage: 0 }, byRate);
    const direct = 10_968.475 - 4090.8 + 595;
    expect(other.lines.find(({ kind }) => kind === 'film')?.exact).toBe(595);
    expect(other.lines.at(-1)?.exact).toBeCloseTo(0.1 * direct, 9);
  });
});
