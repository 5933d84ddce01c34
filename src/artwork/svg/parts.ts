/** What drawing takes: elements, each as often as it is drawn, and steps of filters, each as often as it is run. */
export interface Weight {
  readonly elements: number;
  readonly steps: number;
}

/** An element with an id, and all within it that has none of its own. */
export class Part {
  elements = 0;
  /** Steps of filter functions, run wherever the part is drawn. */
  functions = 0;
  /** Steps of a filter that the part is, run wherever something is filtered by it. */
  filter = 0;
  /** A gradient is a colour to whatever is painted with it. */
  isGradient = false;
  readonly within: Part[] = [];
  /** How often it draws others, by their ids. */
  readonly uses = new Map<string, number>();
  /** What it draws in a paint that all within inherits: the drawn, the paint, and how often the paint is at most drawn for an element. */
  readonly painted: (readonly [drawn: string, paint: string, times: number])[] = [];

  use(id: string, times = 1): void {
    this.uses.set(id, (this.uses.get(id) ?? 0) + times);
  }
}

/** `circular`: a part draws itself. `nested`: they draw each other in too long a chain. */
export type ExpansionProblem = 'circular' | 'nested';

const MOST = 1e15;
const NOTHING: Weight = { elements: 0, steps: 0 };

/**
 * What drawing a part takes, with all that it draws by their ids as often as it does (SVG 2, 5.6 `use`). Each part is worked out
 * once.
 * @param deepest how long a chain of parts may be
 */
export function expand(
  root: Part,
  byId: ReadonlyMap<string, Part>,
  deepest: number,
): Weight | ExpansionProblem {
  const known = new Map<Part, Weight>();
  const atWork = new Set<Part>();
  let problem: ExpansionProblem | null = null;
  const weigh = (part: Part | undefined): Weight => {
    const before = part ? known.get(part) : NOTHING;
    if (!part || before || problem) return before ?? NOTHING;
    if (atWork.has(part) || atWork.size >= deepest) {
      problem = atWork.has(part) ? 'circular' : 'nested';
      return NOTHING;
    }
    atWork.add(part);
    let [elements, steps] = [part.elements, part.functions];
    for (const inner of part.within) {
      const inside = weigh(inner);
      elements += inside.elements;
      steps += inside.steps;
    }
    for (const [id, times] of part.uses) {
      const target = byId.get(id);
      if (target?.isGradient) continue;
      const used = weigh(target);
      elements += used.elements * times;
      steps += (used.steps + (target?.filter ?? 0)) * times;
    }
    for (const [drawn, paint, times] of part.painted) {
      const target = byId.get(paint);
      if (target?.isGradient) continue;
      const often = weigh(byId.get(drawn)).elements * times;
      elements += often * weigh(target).elements;
      steps += often * weigh(target).steps;
    }
    atWork.delete(part);
    const weight = { elements: Math.min(elements, MOST), steps: Math.min(steps, MOST) };
    known.set(part, weight);
    return weight;
  };
  const weight = weigh(root);
  return problem ?? weight;
}
