import type { MapView } from '../../cutting';
import type { LocalDate, Micrometres } from '../../units';

/** What a run lies on: a stretch of a roll, or so many sheets of a size. */
export type FilmFacts =
  | { readonly kind: 'roll'; readonly width: Micrometres; readonly length: Micrometres }
  | {
      readonly kind: 'sheets';
      readonly width: Micrometres;
      readonly length: Micrometres;
      readonly count: number;
    };

/** Every word and figure on the map, in the reader's language and ways of writing numbers. */
export interface CutMapWords {
  readonly title: (run: string) => string;
  readonly facts: (facts: {
    readonly film: FilmFacts;
    readonly copies: number;
    readonly date: Date;
  }) => string;
  readonly view: (view: MapView, mirrored: boolean) => { readonly name: string; readonly note: string };
  readonly page: (number: number, of: number) => string;
  readonly scale: (scale: number) => string;
  readonly leadingEdge: string;
  /** A distance as the map's large figures show it: by the shop's own ruler. */
  readonly distance: (length: Micrometres) => string;
  /** The same by the other ruler: millimetres, or the nearest sixteenth of an inch. */
  readonly otherRuler: (length: Micrometres) => string;
  /** What the large distances at the knife lines are measured from, and the small ones. */
  readonly fromPrevious: string;
  readonly fromStart: (length: Micrometres) => string;
  readonly cutOff: string;
  /** At each sheet: which one, and how large it is. */
  readonly sheet: (number: number, of: number) => string;
  readonly sheetSize: (width: Micrometres, length: Micrometres) => string;
  readonly nextSheet: (page: number) => string;
  /** On film that was spoiled. */
  readonly spoiled: string;
  /** `HB 7` */
  readonly copy: (code: string, number: number) => string;
  readonly size: (width: Micrometres, height: Micrometres) => string;
  readonly span: (number: number) => string;
  /** Beside a box to tick. */
  readonly spanDone: (number: number, copies: number, length: Micrometres) => string;
  readonly sheetDone: (number: number, copies: number) => string;
  /** What stands behind an order's name: `, due Thu, Dec 3`; nothing where no day is told. */
  readonly due: (day: LocalDate | null) => string;
  /** The numbers of a transfer's copies, going up: `1–3, 7`. */
  readonly numbers: (stretches: readonly (readonly [from: number, to: number])[]) => string;
  /** What the pile of a span must hold of each order: never written like the name of a copy. */
  readonly pile: (orders: readonly { readonly code: string; readonly count: number }[]) => string;
  /** Heads the garments of the orders on a run. */
  readonly garments: string;
  readonly count: (count: number) => string;
  readonly onThisPage: string;
  readonly inAll: string;
  readonly allCopies: string;
  readonly totals: (film: FilmFacts, spans: number) => string;
  /** Whether distances take what the printer feeds long into account, or its image does; nothing, where it feeds true. */
  readonly feed: (stretch: number, imageFeed: number) => readonly string[];
  /** The film goes on at a knife line, or after a strip that both pages show. */
  readonly continuesOn: (page: number, strip: string | null) => string;
  readonly continuedFrom: (page: number, strip: string | null) => string;
  readonly moreOnPage: (count: number, page: number) => string;
  readonly everyTransfer: string;
  /** Heads a list of the copies drawn too small for a name, each with where it starts: along the film, and across from the left as drawn. */
  readonly tooSmall: string;
  readonly tooSmallCopy: (
    name: string,
    fromStart: Micrometres,
    fromLeft: Micrometres,
    sheet: number | null,
  ) => string;
  readonly nothing: string;
  readonly noKnifeLines: string;
  readonly caution: { readonly lead: string; readonly rest: string };
  readonly rule: string;
  readonly closing: string;
}
