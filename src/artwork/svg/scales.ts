import { FilterSteps } from './filter-steps';
import type { Piece } from './markup';
import { Part } from './parts';
import { HOLDS_SVG } from './preamble';
import { Refused } from './refusal';
import {
  type Declarations,
  type Drawn,
  declarationsIn,
  drawnBy,
  INDIRECT,
  isInherited,
  type Rules,
} from './styles';

/** How deep elements, and uses of uses, may lie in each other. */
export const DEEPEST = 250;
/** Signs of path data or text that take as long as an element. */
const SIGNS_PER_ELEMENT = 200;
type Open = Extract<Piece, { kind: 'open' }>;

const SHAPES = new Set(
  'path rect circle ellipse line polyline polygon text tspan textPath foreignObject'.split(' '),
);
/** Elements that draw what their address names. */
const DRAWS = new Set('use feImage pattern textPath'.split(' '));
const GRADIENTS = new Set(['linearGradient', 'radialGradient']);
const TEXTS = new Set(['text', 'tspan', 'textPath', 'foreignObject']);
const OUTLINES = ['d', 'points'] as const;
/** An element that is open. */
interface Frame {
  readonly part: Part;
  readonly inherited: ReadonlyMap<string, Drawn>;
  readonly filter: { readonly part: Part; readonly steps: FilterSteps } | null;
  readonly isText: boolean;
}

/** How many vertices an outline has at most: each takes two figures. */
const verticesOf = (attributes: ReadonlyMap<string, string>): number =>
  2 + OUTLINES.reduce((signs, name) => signs + (attributes.get(name)?.length ?? 0), 0) / 2;

/** What each part of an SVG takes and draws, told of its tags in their order. */
export class Scales {
  readonly root = new Part();
  readonly parts = new Map<string, Part>();
  private readonly rules: Rules;
  private readonly plain: (text: string) => string;
  private readonly open: Frame[] = [];

  constructor(rules: Rules, plain: (text: string) => string) {
    this.rules = rules;
    this.plain = plain;
  }

  private get frame(): Frame {
    return this.open.at(-1) ?? { part: this.root, inherited: new Map(), filter: null, isText: false };
  }

  /** By how a sheet and the element itself say that it is drawn, the stronger last. */
  private drawnBy({ name }: Open, attributes: ReadonlyMap<string, string>): Map<string, Drawn> {
    const found = new Map<string, Drawn>();
    const take = (declarations: Declarations | undefined) => {
      for (const [property, drawn] of declarations ?? []) found.set(property, drawn);
    };
    for (const [property, value] of attributes) {
      const drawn = drawnBy(property, value);
      if (drawn) found.set(property, drawn);
    }
    if (this.rules.size > 0) {
      take(this.rules.get('*'));
      take(this.rules.get(name));
      for (const each of new Set((attributes.get('class') ?? '').split(/\s+/)))
        take(this.rules.get(`.${each}`));
      take(this.rules.get(`#${attributes.get('id') ?? ''}`));
    }
    take(declarationsIn(attributes.get('style') ?? ''));
    return found;
  }

  private partOf(id: string | undefined, above: Part): Part {
    if (id === undefined || this.parts.has(id)) return above;
    const part = new Part();
    above.within.push(part);
    this.parts.set(id, part);
    return part;
  }

  /** The part a filter or a gradient is kept in; one without an id is drawn by nothing. */
  private static mark(part: Part, name: string, above: Frame): Frame['filter'] {
    if (GRADIENTS.has(name)) part.isGradient = part !== above.part;
    return name === 'filter' && part !== above.part ? { part, steps: new FilterSteps() } : above.filter;
  }

  enter(tag: Open): void {
    const above = this.frame;
    const attributes = new Map(tag.attributes.map(([name, value]) => [name, this.plain(value)]));
    const part = this.partOf(attributes.get('id'), above.part);
    const own = this.drawnBy(tag, attributes);
    if (own.has(INDIRECT) || [...attributes.values()].some((value) => HOLDS_SVG.test(value))) {
      throw new Refused('indirect');
    }
    part.elements += 1;
    for (const name of OUTLINES) part.elements += (attributes.get(name)?.length ?? 0) / SIGNS_PER_ELEMENT;
    let inherited = above.inherited;
    for (const [property, drawn] of own) {
      part.functions += drawn.functions;
      if (isInherited(property)) inherited = new Map(inherited).set(property, drawn);
      else for (const id of drawn.ids) part.use(id);
    }
    this.paint(tag, part, inherited, attributes);
    above.filter?.steps.add(tag.name, attributes);
    const frame = {
      part,
      inherited,
      filter: Scales.mark(part, tag.name, above),
      isText: above.isText || TEXTS.has(tag.name),
    };
    this.open.push(frame);
    if (this.open.length > DEEPEST) throw new Refused('nested');
    if (tag.isEmpty) this.leave();
  }

  /** Counts what an element draws by its address, and the paints of shapes, its own or inherited. */
  private paint(
    tag: Open,
    part: Part,
    inherited: Frame['inherited'],
    attributes: ReadonlyMap<string, string>,
  ): void {
    const used = DRAWS.has(tag.name) ? this.addressesOf(tag) : [];
    for (const id of used) part.use(id);
    for (const [property, { ids }] of inherited) {
      const isMarker = property.startsWith('marker');
      for (const id of ids) {
        if (SHAPES.has(tag.name)) part.use(id, isMarker ? verticesOf(attributes) : 1);
        else for (const drawn of used) part.painted.push([drawn, id, isMarker ? SIGNS_PER_ELEMENT : 1]);
      }
    }
  }

  /** The parts of the file that an element names: by `href`, and by that of an older name space beside it. */
  private addressesOf({ attributes }: Open): string[] {
    return attributes
      .filter(([name]) => name === 'href')
      .map(([, value]) => this.plain(value).trim())
      .filter((value) => value.startsWith('#'))
      .map((value) => value.slice(1));
  }

  leave(): void {
    const left = this.open.pop();
    const filter = left?.filter;
    if (filter && filter !== this.frame.filter) filter.part.filter = filter.steps.steps;
  }

  text(text: string): void {
    if (this.frame.isText) this.frame.part.elements += this.plain(text).length / SIGNS_PER_ELEMENT;
  }
}
