import { type Fabric, fail, ok, type Result, withoutAccents } from '../units';

/**
 * What a fabric is called in the tables of shops, in the languages of the app and without accents (common practice, no source). Of two
 * that a cell names, the one further down takes less heat: the garment is pressed by that one.
 */
const words: readonly (readonly [Fabric, RegExp])[] = [
  ['canvas', /canvas|\blona\b|loneta/],
  ['cotton', /cotton|algodon/],
  ['blend', /blend|mezcla|poly ?cotton|cotton ?poly|\bcvc\b|\bt ?c\b|\d ?\/ ?\d/],
  ['rayon', /rayon|viscos|modal|lyocell|bamb[ou]/],
  ['polyester', /polyester|poliester|\bpoly\b|\bpes\b|microfi(?:ber|bre|bra)|performance/],
  ['elastane', /elastan|spandex|\bstretch\b/],
  ['acrylic', /acrylic|acrilic/],
  ['nylon', /nylon|nailon|polyamid|poliamid/],
  ['shell', /coated|\bshell\b|softshell|waterproof|impermeabl|recubiert/],
  ['leather', /leather|cuero|\bpiel\b|polipiel/],
  ['non-woven', /non ?woven|polypropylen|polipropilen|no tejid/],
];

const UNTOLD = new Set(['', '-', '–', '?', 'not told', 'unknown', 'n/a', 'tbd', 'no se sabe', 'sin indicar']);
const OTHER = new Set(['other', 'something else', 'otro', 'otra', 'otra cosa']);

/** Reads what a garment is made of: `100% cotton`, `50/50`, `95 % algodón, 5 % poliéster`; `null` where nothing is told. */
export function readFabric(text: string): Result<Fabric | null, 'unreadable'> {
  const plain = withoutAccents(text).toLowerCase().replace(/[-_]+/g, ' ').replace(/\s+/g, ' ').trim();
  if (UNTOLD.has(plain)) return ok(null);
  if (OTHER.has(plain)) return ok('other');
  const named = words.flatMap(([fabric, word]) => (word.test(plain) ? [fabric] : []));
  const isBlend = named.every(
    (fabric) => fabric === 'cotton' || fabric === 'blend' || fabric === 'polyester',
  );
  if (isBlend && named.length > 1) return ok('blend');
  const gentlest = named.at(-1);
  return gentlest === undefined ? fail('unreadable') : ok(gentlest);
}
