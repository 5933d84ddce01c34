import type { Limits, Way } from './build';
import { type Asked, emptySheet, layoutOf, leftOver, type Sheet, sheetsOf } from './exchange-sheets';
import type { Layout } from './layout';
import type { Sequence } from './sequence';
import type { Strip } from './strip';

/** What an exchange works with. */
export interface ExchangeTools {
  readonly ways: readonly Way[];
  readonly limits: Limits;
  readonly random: () => number;
}

/** Annealing accepts a pool larger by about this share of a sheet at first, and by hardly anything in the end. */
const WARM = 0.05;
const COLD = 0.002;
/** Rebuilds in one cycle of annealing. */
const CYCLE = 20_000;
/** Sheets taken apart at once, at the most. */
const MOST_SHEETS = 3;
/** How often copies are sorted by size before they are built anew, instead of kept in the order that they had. */
const SORTED = 0.3;

/**
 * Empties one sheet into the others: its copies are a pool, and again and again a few sheets are taken apart and built
 * anew from their own copies and the pool's, in another order; what finds no place is the new pool. Annealing makes the
 * pool's area small. A few sheets are built a hundred times as fast as all of them.
 *
 * After L. Wei, W.-C. Oon, W. Zhu and A. Lim, A goal-driven approach to the 2D bin packing and variable-sized bin packing
 * problems, European Journal of Operational Research 224(1), 110-121, 2013: the number of sheets is given, and the area
 * of what is left out is made small.
 */
export class Exchange {
  private readonly sheets: Sheet[];
  private pool: Asked = { piece: [], turned: [] };
  private poolArea = 0;
  private leastArea = 0;
  private left = CYCLE;
  private readonly strip: Strip;
  private readonly tools: ExchangeTools;

  /** @param start a layout of all copies on two sheets or more */
  constructor(strip: Strip, start: Layout, tools: ExchangeTools) {
    this.strip = strip;
    this.tools = tools;
    this.sheets = sheetsOf(start, start.piece.length, start.tops.length);
    this.openEmptiest();
  }

  /** How many sheets it tries to do with. */
  get aim(): number {
    return this.sheets.length;
  }

  /**
   * Rebuilds a few sheets once.
   * @returns a layout of all copies, if the pool has become smaller than before and fits a sheet
   */
  step(): Layout | null {
    const { sheets, strip } = this;
    const { random, ways, limits } = this.tools;
    const done = 1 - this.left / CYCLE;
    this.left = this.left > 1 ? this.left - 1 : CYCLE;
    const chosen = this.choose(1 + Math.floor(random() * Math.min(sheets.length, MOST_SHEETS)));
    const sequence = this.sequenceOf(chosen);
    const { decoder, rule } = ways[Math.floor(random() * ways.length)] as Way;
    const build = decoder.decode(sequence, rule, { ...limits, most: chosen.length });
    const warmth = strip.width * strip.bins.other * WARM * (COLD / WARM) ** done;
    if (random() >= Math.exp((this.poolArea - build.unplacedArea) / warmth)) return null;
    const rebuilt = sheetsOf(build, build.length, build.bins);
    for (const [index, sheet] of chosen.entries()) sheets[sheet] = rebuilt[index] ?? emptySheet();
    this.pool = leftOver(sequence, build);
    this.poolArea = build.unplacedArea;
    if (this.poolArea >= this.leastArea) return null;
    this.leastArea = this.poolArea;
    return this.whole();
  }

  /** Takes the emptiest sheet apart: its copies are the pool. */
  private openEmptiest(): void {
    const areas = this.sheets.map(({ piece }) => piece.reduce((sum, own) => sum + this.areaOf(own), 0));
    const emptiest = areas.indexOf(Math.min(...areas));
    const [opened] = this.sheets.splice(emptiest, 1);
    this.pool = opened ?? emptySheet();
    this.poolArea = areas[emptiest] ?? 0;
    this.leastArea = this.poolArea;
  }

  private areaOf(piece: number): number {
    return (this.strip.across[piece] as number) * (this.strip.along[piece] as number);
  }

  /** Different sheets by chance. */
  private choose(count: number): number[] {
    const { random } = this.tools;
    const chosen: number[] = [];
    while (chosen.length < count) {
      const sheet = Math.floor(random() * this.sheets.length);
      if (!chosen.includes(sheet)) chosen.push(sheet);
    }
    return chosen;
  }

  /** The copies of the pool among those of some sheets: sorted by size with some disorder, or put in by chance. */
  private sequenceOf(chosen: readonly number[]): Sequence {
    const { random } = this.tools;
    const asked = this.mixed(chosen);
    if (random() < SORTED) return this.sorted(asked, (area) => area * (0.6 + 0.8 * random()));
    const { piece, turned } = asked;
    const [a, b] = [Math.floor(random() * piece.length), Math.floor(random() * piece.length)];
    for (const list of [piece, turned]) [list[a], list[b]] = [list[b] as number, list[a] as number];
    if (this.strip.turns[piece[a] as number] === 1 && random() < 0.3) turned[a] = 1 - (turned[a] as number);
    return { piece, turned, count: piece.map(() => 1) };
  }

  /** The copies of some sheets in their order, those of the pool among them by chance. */
  private mixed(chosen: readonly number[]): Asked {
    const { random } = this.tools;
    const piece: number[] = [];
    const turned: number[] = [];
    for (const sheet of chosen) {
      piece.push(...(this.sheets[sheet] as Sheet).piece);
      turned.push(...(this.sheets[sheet] as Sheet).turned);
    }
    for (let copy = 0; copy < this.pool.piece.length; copy += 1) {
      const at = Math.floor(random() * (piece.length + 1));
      piece.splice(at, 0, this.pool.piece[copy] as number);
      turned.splice(at, 0, this.pool.turned[copy] as number);
    }
    return { piece, turned };
  }

  /** Copies by what their area counts for, the largest first. */
  private sorted({ piece, turned }: Asked, weigh: (area: number) => number): Sequence {
    const key = piece.map((own) => weigh(this.areaOf(own)));
    const order = [...piece.keys()].sort((a, b) => (key[b] as number) - (key[a] as number));
    return {
      piece: order.map((index) => piece[index] as number),
      turned: order.map((index) => turned[index] as number),
      count: piece.map(() => 1),
    };
  }

  /** All copies, those of the pool on a sheet of their own; `null` where they do not fit one. */
  private whole(): Layout | null {
    const { sheets, pool, strip } = this;
    if (pool.piece.length > 0) {
      const last = this.lastSheet();
      return last && layoutOf([...sheets, last], strip);
    }
    const all = [...sheets];
    if (sheets.length > 1) this.openEmptiest();
    return layoutOf(all, strip);
  }

  /** The pool's copies on one sheet, as short as any way builds it; `null` where they do not fit. */
  private lastSheet(): Sheet | null {
    const { ways, limits } = this.tools;
    const sequence = this.sorted(this.pool, (area) => area);
    let last: Sheet | null = null;
    for (const { decoder, rule } of ways) {
      const build = decoder.decode(sequence, rule, { ...limits, most: 1 });
      const [sheet] = sheetsOf(build, build.length, build.bins);
      if (build.unplacedArea === 0 && sheet && sheet.top < (last?.top ?? Number.POSITIVE_INFINITY)) {
        last = sheet;
      }
    }
    return last;
  }
}
