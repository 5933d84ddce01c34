import { type Book, embeddedIn } from '../model';
import { withoutAccents } from '../units';

/** The most signs a code has. */
const MOST = 4;
/** Letters that are not mistaken for a figure. */
const LETTERS = [...'ABCDEFGHJKLMNPQRSTUVWXYZ'];

/** Why a code is not told apart from others on the film. */
export type CodeFlaw =
  | { readonly code: 'ends-in-figure' }
  /** One of the two is the beginning of the other. */
  | { readonly code: 'begins-alike'; readonly other: string };

/**
 * What keeps a code from being told apart: copies are named by code and number, as `HB 7`. Behind a code that ends in a figure, or
 * where one code is the beginning of another, nobody knows where the code ends.
 * @param others the codes of other open orders
 */
export function codeFlaw(code: string, others: Iterable<string>): CodeFlaw | null {
  if (!/\p{L}$/u.test(code)) return { code: 'ends-in-figure' };
  for (const other of others) {
    if (code.startsWith(other) || other.startsWith(code)) return { code: 'begins-alike', other };
  }
  return null;
}

/** Codes that another order may not have. */
export interface TakenCodes {
  /** All that orders of the book have, or that stand on film. */
  readonly all: ReadonlySet<string>;
  /** Those of them that are at work: another code may not begin like one. */
  readonly open: ReadonlySet<string>;
}

/**
 * The codes beside an order's own: those of other orders, and those that others had when a run was locked. The map beside the
 * printer and the film itself keep telling copies by these until the run is closed, whatever the order is called since.
 * @param but the order that is looked past
 */
export function takenCodes(book: Pick<Book, 'order' | 'run'>, but?: string): TakenCodes {
  const all = new Set<string>();
  const open = new Set<string>();
  for (const { id, code, archived } of Object.values(book.order)) {
    if (id === but) continue;
    all.add(code);
    if (!archived) open.add(code);
  }
  for (const run of Object.values(book.run)) {
    if (run.state === 'closed') continue;
    for (const { id, code } of embeddedIn(run).flatMap(({ orders }) => orders)) {
      if (id === but) continue;
      all.add(code);
      open.add(code);
    }
  }
  return { all, open };
}

/** The figures in a name that tell its order: the longest, of several the last; the end of them, which differs from order to order. */
function figuresOf(name: string): string | null {
  const all = name.match(/\d+/g) ?? [];
  const longest = all.reduce((best, each) => (each.length >= best.length ? each : best), '');
  return longest === '' ? null : longest.slice(1 - MOST);
}

/**
 * Codes that suit a name, the best first. Of a name with a number they are its last three figures and a letter, the name's initials
 * before all others: `041A` of #1041, `12T` of Team 12. Of any other they are two letters, its initials or the first of a single
 * word, then the first and another of its letters, and then with a figure between two letters: `CC`, `CA`, `C2C`.
 */
function* codesFor(name: string): Generator<string> {
  const plain = withoutAccents(name).toUpperCase();
  const words = plain.split(/[^\p{L}]+/u).filter(Boolean);
  const initials = words.flatMap((word) => [...word].slice(0, 1));
  const figures = figuresOf(plain);
  if (figures !== null) {
    for (const letter of [...initials.filter((letter) => LETTERS.includes(letter)), ...LETTERS]) {
      yield `${figures}${letter}`;
    }
  }
  const all = words.flatMap((word) => [...word]);
  const [first = 'X', second = 'X'] = words.length > 1 ? initials : all;
  for (const letter of [second, ...all.slice(1)]) yield `${first}${letter}`;
  for (const last of [second, ...LETTERS]) {
    for (let number = 2; number < 100; number += 1) yield `${first}${number}${last}`;
  }
}

/** Hands out codes, each of them unlike all those before. */
export class Codes {
  private readonly taken = new Set<string>();
  /** What open codes begin with, whole codes too. */
  private readonly beginnings = new Set<string>();
  private readonly open = new Set<string>();

  constructor({ all, open }: TakenCodes) {
    for (const code of all) this.taken.add(code);
    for (const code of open) this.add(code);
  }

  /** Takes a code of an order at work: another may not begin like it either. */
  private add(code: string): void {
    this.taken.add(code);
    this.open.add(code);
    for (let length = 1; length <= code.length; length += 1) this.beginnings.add(code.slice(0, length));
  }

  private isFree(code: string): boolean {
    if (this.taken.has(code) || this.beginnings.has(code)) return false;
    for (let length = 1; length < code.length; length += 1) {
      if (this.open.has(code.slice(0, length))) return false;
    }
    return true;
  }

  /** A code for a name that ends in a letter and begins like no open one, nor they like it. */
  take(name: string): string {
    const code = this.find(name);
    this.add(code);
    return code;
  }

  /** A code that is given, if it can be told from those before; else one for the name. */
  keep(code: string, name: string): string {
    if (!this.isFree(code)) return this.take(name);
    this.add(code);
    return code;
  }

  private find(name: string): string {
    for (const code of codesFor(name)) if (this.isFree(code)) return code;
    // So many orders of one initial: any number with a letter.
    for (const letter of LETTERS) {
      for (let number = 0; number < 1000; number += 1) {
        if (this.isFree(`${number}${letter}`)) return `${number}${letter}`;
      }
    }
    throw new Error('no code is left');
  }
}

/** Whether a code is one that is made for a name. */
export function isMadeFor(code: string, name: string): boolean {
  for (const own of codesFor(name)) if (own === code) return true;
  return false;
}
