/** Those that take a second image even where none is named (Filter Effects Module 1, 9.4). */
const TAKES_TWO = new Set(['feBlend', 'feComposite', 'feDisplacementMap']);

/** What an element of a filter takes beside one that moves or tints an image: measured in Chromium, rounded up. */
const WEIGHTS: Readonly<Record<string, number>> = {
  feGaussianBlur: 1,
  feDropShadow: 2,
  feDiffuseLighting: 4,
  feSpecularLighting: 4,
};

const numbersIn = (text: string | undefined): number[] =>
  (text ?? '')
    .split(/[\s,]+/)
    .map(Number)
    .filter((value) => value > 0 && Number.isFinite(value));

function weightOf(name: string, attributes: ReadonlyMap<string, string>): number {
  switch (name) {
    case 'feTurbulence':
      return Math.max(1, (numbersIn(attributes.get('numOctaves'))[0] ?? 1) / 2);
    case 'feConvolveMatrix': {
      const [across = 3, down = across] = numbersIn(attributes.get('order'));
      return Math.max(1, (across * down) / 9);
    }
    case 'feMorphology':
      return 2 + Math.max(0, ...numbersIn(attributes.get('radius')).slice(0, 2)) / 10;
    default:
      return WEIGHTS[name] ?? 1;
  }
}

/**
 * The steps of one filter. An element takes the results of others, each of which is worked out again for every element
 * that takes it, so that a short chain of elements which each take the last twice is a long one.
 */
export class FilterSteps {
  /** Of the result that is drawn. */
  get steps(): number {
    return this.last?.steps ?? 0;
  }
  private last: { steps: number } | null = null;
  private before: { steps: number } | null = null;
  private readonly results = new Map<string, { steps: number }>();

  private taken(name: string | undefined): number {
    if (
      name !== undefined &&
      /^(Source(Graphic|Alpha)|Background(Image|Alpha)|(Fill|Stroke)Paint)$/.test(name)
    ) {
      return 0;
    }
    return (this.results.get(name ?? '') ?? this.before)?.steps ?? 0;
  }

  /** Takes in an element within the filter, in the order of the file. */
  add(name: string, attributes: ReadonlyMap<string, string>): void {
    if (name === 'feMergeNode') {
      if (this.last) this.last.steps += this.taken(attributes.get('in'));
      return;
    }
    if (!/^fe(?!Func|(Distant|Point|Spot)Light)/.test(name)) return;
    this.before = this.last;
    const isSource =
      name === 'feFlood' || name === 'feTurbulence' || name === 'feImage' || name === 'feMerge';
    const second = attributes.get('in2');
    const inputs =
      (isSource ? 0 : this.taken(attributes.get('in'))) +
      (second !== undefined || TAKES_TWO.has(name) ? this.taken(second) : 0);
    this.last = { steps: weightOf(name, attributes) + inputs };
    const result = attributes.get('result');
    if (result !== undefined) this.results.set(result, this.last);
  }
}
