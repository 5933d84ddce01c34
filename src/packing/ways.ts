import type { Decoder, Rule, Way } from './build';
import { ApartDecoder } from './decode-apart';
import { AroundSkylineDecoder } from './decode-around-skyline';
import { AroundStraightDecoder } from './decode-around-straight';
import { GuillotineDecoder } from './decode-guillotine';
import { SkylineDecoder } from './decode-skyline';
import { StagedDecoder } from './decode-staged';
import { isApart } from './problem';
import { isEmpty, type Strip } from './strip';

const strict: Rule = { waste: 0, exact: 0.004, level: true, paired: false, left: false };
/** By a look ahead at the copy beside; on the one shop day of 554 copies 0.3% less film than by the strict rule, nearly all of it by the wider waste. */
const pairs: Rule = { ...strict, waste: 0.06, paired: true };

/**
 * No one rule is best on every day: they differ in how much strip a copy may leave unusable beside itself. Each
 * has a lane of its own, and the better a lane's layouts, the more of the time it gets.
 */
const others: readonly Rule[] = [
  { waste: 0.02, exact: 0.004, level: true, paired: false, left: false },
  { waste: 0.06, exact: 0.002, level: false, paired: false, left: false },
  { waste: 0.15, exact: 0.004, level: true, paired: false, left: false },
  { waste: Number.POSITIVE_INFINITY, exact: -1, level: false, paired: false, left: true },
];

/** All ways to build layouts on a strip: every decoder that keeps to how it is cut, under every rule. */
export function waysOf(strip: Strip): Way[] {
  // Straight cuts and layouts around pinned copies know no pairs.
  const first = strip.cutting === 'free' && isEmpty(strip) ? pairs : strict;
  return decodersOf(strip).flatMap((decoder) => [first, ...others].map((rule) => ({ decoder, rule })));
}

function decodersOf(strip: Strip): Decoder[] {
  const isBare = isEmpty(strip);
  if (!isBare && strip.cutting === 'free') return [new AroundSkylineDecoder(strip)];
  const decoders = {
    free: () => [new SkylineDecoder(strip)],
    straight: () => [new GuillotineDecoder(strip), new StagedDecoder(strip)],
    staged: () => [new StagedDecoder(strip)],
  }[strip.cutting]();
  if (!isBare) return decoders.map((decoder) => new AroundStraightDecoder(strip, decoder));
  return isApart(strip.together) ? decoders.map((decoder) => new ApartDecoder(strip, decoder)) : decoders;
}
