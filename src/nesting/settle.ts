import type { Overlap, Stretch } from './overlap';
import type { Shape } from './shape';
import type { Stock } from './stock';

/** Places that are tried for a copy, each in a turn drawn at random: of all rows, and of those in which it would touch another before or behind. */
const DRAWN = 8;
const TOUCHED = 8;
/** How far from the best of them it goes on, in rows; halved where that is no better. */
const FAR = 4;

/** Moves copies to where they overlap least of what is tried: rows drawn at random, and those near to the best. */
export class Settling {
  private readonly stock: Stock;
  private readonly overlap: Overlap;
  private readonly stretches: readonly Stretch[];
  private readonly random: () => number;
  /** By shape: in how many rows it may begin, all stretches up to each counted. */
  private readonly rooms = new Map<number, readonly number[]>();
  /** The best place that was found for a copy. */
  private shape = 0;
  private row = 0;
  private x = 0;
  private bound = 0;

  constructor(
    overlap: Overlap,
    { stock, stretches, random }: { stock: Stock; stretches: readonly Stretch[]; random: () => number },
  ) {
    this.overlap = overlap;
    this.stock = stock;
    this.stretches = stretches;
    this.random = random;
  }

  /** Moves a copy to the best place that it finds; where that is no better it stays. */
  settle(copy: number): void {
    const { overlap, stock } = this;
    const cost = overlap.costOf(copy);
    this.bound = cost;
    this.shape = overlap.shape[copy] as number;
    this.row = overlap.row[copy] as number;
    this.x = overlap.x[copy] as number;
    const turns = stock.shapes[(stock.all[this.shape] as Shape).piece] as readonly number[];
    const { row } = this;
    for (const turn of turns) this.try(copy, turn, row);
    for (let drawn = 0; drawn < DRAWN && this.bound > 0; drawn += 1) {
      const turn = turns[this.below(turns.length)] as number;
      this.try(copy, turn, this.drawRow(turn));
    }
    for (let touched = 0; touched < TOUCHED && this.bound > 0; touched += 1) {
      const turn = turns[this.below(turns.length)] as number;
      const beside = this.below(overlap.count);
      const start = overlap.row[beside] as number;
      this.try(copy, turn, start - (stock.all[turn] as Shape).rows);
      this.try(copy, turn, start + (stock.all[overlap.shape[beside] as number] as Shape).rows);
    }
    for (let step = FAR; step >= 1 && this.bound > 0; ) {
      const { shape, row, bound } = this;
      this.try(copy, shape, row - step);
      this.try(copy, shape, row + step);
      if (this.bound === bound) step >>= 1;
    }
    if (this.bound < cost) overlap.move(copy, { shape: this.shape, row: this.row, x: this.x });
  }

  private below(bound: number): number {
    return Math.floor(this.random() * bound);
  }

  /** Looks for a place across in a row, where a shape may begin in it. */
  private try(copy: number, shape: number, row: number): void {
    if (!this.mayBegin(shape, row)) return;
    const cost = this.overlap.acrossIn(copy, shape, row, this.bound);
    if (cost >= this.bound) return;
    this.bound = cost;
    this.shape = shape;
    this.row = row;
    this.x = this.overlap.found;
  }

  private roomsOf(shape: number): readonly number[] {
    const known = this.rooms.get(shape);
    if (known) return known;
    const { length } = this.stock.all[shape] as Shape;
    let sum = 0;
    const rooms = this.stretches.map(({ reach }) => {
      sum += Math.max(0, Math.floor((reach - length) / this.stock.height) + 1);
      return sum;
    });
    this.rooms.set(shape, rooms);
    return rooms;
  }

  /** A row drawn from those in which a shape may begin; before all of them if it fits no stretch. */
  private drawRow(shape: number): number {
    const rooms = this.roomsOf(shape);
    const drawn = this.below(rooms.at(-1) as number);
    let before = 0;
    for (let at = 0; at < rooms.length; at += 1) {
      const sum = rooms[at] as number;
      if (drawn < sum) return (this.stretches[at] as Stretch).from + drawn - before;
      before = sum;
    }
    return -1;
  }

  /** Whether a shape that begins in a row lies in one of the stretches. */
  private mayBegin(shape: number, row: number): boolean {
    const { length } = this.stock.all[shape] as Shape;
    for (let at = 0; at < this.stretches.length; at += 1) {
      const { from, reach } = this.stretches[at] as Stretch;
      if (row >= from && (row - from) * this.stock.height + length <= reach) return true;
    }
    return false;
  }
}
