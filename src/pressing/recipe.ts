import type { Micrometres, Seconds, Temperature } from '../units';

/** How the film wants to be peeled; its maker's data sheet says so. */
export const peels = ['hot', 'warm', 'cold'] as const;
export type Peel = (typeof peels)[number];

/** What a garment is made of, as far as heat is concerned. */
export const fabrics = [
  'cotton',
  'blend',
  'polyester',
  'nylon',
  'rayon',
  'canvas',
  'leather',
  'other',
] as const;
export type Fabric = (typeof fabrics)[number];

export const pressures = ['light', 'medium', 'firm'] as const;
export const covers = ['none', 'paper', 'silicone', 'fabric'] as const;

/** Whose values they are: common practice to start with, the film maker's, or the shop's own. */
export type Origin = 'common-practice' | 'data-sheet' | 'own';

/** How one kind of film is pressed onto one kind of fabric. */
export interface PressValues {
  readonly temperature: Temperature;
  readonly pressure: (typeof pressures)[number];
  /** Under the closed press: for small transfers and for large ones, see {@link LARGE}. */
  readonly seconds: { readonly small: Seconds; readonly large: Seconds };
  /** After opening, before the film is peeled. */
  readonly wait: Seconds;
  /** The garment alone, to drive moisture out and lay it flat. */
  readonly prePress: Seconds;
  /** After peeling; 0 for none. */
  readonly secondPress: Seconds;
  readonly cover: (typeof covers)[number];
}

/** How powder is melted into the print. */
export interface CureValues {
  readonly temperature: Temperature;
  readonly seconds: Seconds;
  /** From a hovering platen to the film; 0 in an oven. */
  readonly clear: Micrometres;
}

/** A transfer is large when its longer side is at least so long: 200 mm, common practice, no source. */
export const LARGE = 200_000 as Micrometres;

/** How long a transfer is pressed. */
export const pressSeconds = (
  { seconds }: Pick<PressValues, 'seconds'>,
  size: { readonly width: Micrometres; readonly height: Micrometres },
): Seconds => (Math.max(size.width, size.height) >= LARGE ? seconds.large : seconds.small);
