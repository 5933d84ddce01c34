import { fromInches, type Micrometres, toInches, um } from '../units';
import type { RasterCheck } from './check';
import type { Rgb } from './colour';
import type { FileFacts } from './facts';
import type { Fringe } from './fringe';
import type { Limits } from './limits';
import { effectivePpi } from './size';
import { whitesOf } from './thin-white';
import type { Clipped } from './wide-gamut';

/** All that was found out about an artwork at a printed size; the same for the same file, size and limits. */
export interface ArtworkCheck extends RasterCheck {
  readonly facts: FileFacts;
  /** An SVG or a PDF has no pixels of its own. */
  readonly vector: boolean;
  /** How much of the image's width its trimmed box is. */
  readonly shown: number;
  /** What sRGB does not hold of an image in a wider space; `null` where it is in sRGB, or its profile tells no matrix. */
  readonly clipped: Clipped | null;
}

/** How a finding, or a transfer, will print: well, perhaps, or badly. */
export type Grade = 'good' | 'check' | 'poor';

/** Dots, or holes, of a screen that are smaller than a limit. */
interface SmallDots {
  readonly count: number;
  /** All dots, or holes, that the screen has. */
  readonly dots: number;
  readonly least: Micrometres;
  readonly limit: Micrometres;
  /** Dots an inch along their rows. */
  readonly lines: number;
}

/** Something a shop should know before it prints, and how bad it is. */
export type Finding = { readonly grade: Grade } & (
  | { readonly code: 'coarse'; readonly x: number; readonly y: number }
  | { readonly code: 'stretched'; readonly share: number; readonly height: Micrometres }
  | { readonly code: 'coarse-image'; readonly ppi: number }
  | { readonly code: 'font'; readonly names: readonly string[] }
  | { readonly code: 'see-through'; readonly share: number }
  | {
      readonly code: 'thin-strokes';
      readonly count: number;
      readonly least: Micrometres;
      readonly limit: Micrometres;
    }
  | { readonly code: 'white-lost'; readonly count: number; readonly choke: Micrometres }
  | {
      readonly code: 'thin-white';
      readonly count: number;
      /** White left in the middle of the thinnest, once both sides are choked. */
      readonly least: Micrometres;
      readonly limit: Micrometres;
      readonly choke: Micrometres;
    }
  | { readonly code: 'specks'; readonly count: number; readonly limit: Micrometres }
  | ({ readonly code: 'screen-dots' } & SmallDots)
  | ({ readonly code: 'screen-holes' } & SmallDots)
  | {
      readonly code: 'strays';
      readonly count: number;
      /** The printed size, and what it would be without them. */
      readonly size: { readonly width: Micrometres; readonly height: Micrometres };
      readonly without: { readonly width: Micrometres; readonly height: Micrometres };
    }
  | {
      readonly code: 'openings';
      readonly count: number;
      readonly least: Micrometres;
      readonly limit: Micrometres;
    }
  | { readonly code: 'ground'; readonly colour: Rgb }
  | { readonly code: 'checkerboard' }
  | { readonly code: 'fringe'; readonly share: number; readonly ground: Fringe['ground'] }
  | { readonly code: 'black-on-black'; readonly share: number }
  | {
      readonly code: 'profile';
      readonly name: string;
      readonly inks: FileFacts['inks'] | null;
      /** Share of the ink that sRGB does not hold; `null` where that is not known. */
      readonly clipped: number | null;
    }
  | { readonly code: 'gamma'; readonly gamma: number }
  | { readonly code: 'animated' }
  | { readonly code: 'deep' }
  | { readonly code: 'outside'; readonly count: number }
);

/** Pixels an inch from which on artwork is good, and below which it is poor (common practice, no source). */
const GOOD_PPI = 250;
const POOR_PPI = 150;
/** Shares from which see-through pixels are to be looked at, and from which they spoil a print (ours, no source). */
const SOME_SEE_THROUGH = 0.005;
const MUCH_SEE_THROUGH = 0.1;
/** Axes that differ by more than this stretch the artwork visibly. */
const STRETCHED = 0.015;
const SOME_BLACK = 0.01;
/** Less of the ink may lie outside of sRGB without being missed (ours, no source). */
const SOME_CLIPPED = 0.001;
/** A design that strays make larger by less, in micrometres, is no larger to the eye; from this share on it is spoiled (ours, no source). */
const LARGER = 200;
const MUCH_LARGER = 0.05;

const gradeOf = (poor: boolean): Grade => (poor ? 'poor' : 'check');

/** Relative luminance up to which a garment counts as black: dark greys, not navy. */
const BLACK_GARMENT = 0.02;

/** The relative luminance of `#rrggbb` (WCAG 2.2, definition of relative luminance), 0 to 1. */
export function luminance(shade: string): number {
  const linear = (from: number) => {
    const value = Number.parseInt(shade.slice(from, from + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * linear(1) + 0.7152 * linear(3) + 0.0722 * linear(5);
}

/** Whether black ink would not be missed on a garment of this shade. */
const isBlackGarment = (shade: string | null): boolean => shade !== null && luminance(shade) <= BLACK_GARMENT;

const below = (widths: readonly Micrometres[], limit: Micrometres): number =>
  widths.filter((width) => width < limit).length;

function smallDots(screen: ArtworkCheck['screens']['dots'], limit: Micrometres): SmallDots | null {
  const [least] = screen?.widths ?? [];
  if (!screen || least === undefined || least >= limit) return null;
  const { widths, dots, spacing } = screen;
  return { count: below(widths, limit), dots, least, limit, lines: fromInches(1) / spacing };
}

/**
 * What is to be said of an artwork, the worst first.
 * @param printed size and garment it is printed for
 */
export function findingsOf(
  check: ArtworkCheck,
  printed: { readonly width: Micrometres; readonly height: Micrometres; readonly shade: string | null },
  limits: Limits,
): Finding[] {
  const found: Finding[] = [];
  const { facts, sums, strokes, specks, openings, screens } = check;
  const ppi = effectivePpi(check.pixels, printed);
  if (!check.vector) {
    const least = Math.round(Math.min(ppi.x, ppi.y));
    if (least < GOOD_PPI) found.push({ code: 'coarse', grade: gradeOf(least < POOR_PPI), ...ppi });
  }
  // How the file says that its pixels are shaped is how they should print.
  const stretch = ppi.x / ppi.y / facts.aspect;
  if (!check.vector && Math.abs(stretch - 1) > STRETCHED) {
    const height = um(printed.height / stretch);
    found.push({ code: 'stretched', grade: 'check', share: Math.abs(stretch - 1), height });
  }
  if (facts.embedded !== null) {
    const ppi = Math.round((facts.embedded * check.shown) / toInches(printed.width));
    if (ppi < GOOD_PPI) found.push({ code: 'coarse-image', grade: gradeOf(ppi < POOR_PPI), ppi });
  }
  if (facts.fonts.length > 0) found.push({ code: 'font', grade: 'poor', names: facts.fonts });
  if (check.ground) found.push({ code: 'ground', grade: 'poor', colour: check.ground });
  if (check.checkerboard) found.push({ code: 'checkerboard', grade: 'poor' });
  if (check.fringe) found.push({ code: 'fringe', grade: 'check', ...check.fringe });
  const soft = check.seeThrough.share;
  if (soft >= SOME_SEE_THROUGH) {
    found.push({ code: 'see-through', grade: gradeOf(soft >= MUCH_SEE_THROUGH), share: soft });
  }
  const [least] = strokes.widths;
  if (least !== undefined && least < limits.stroke) {
    found.push({
      code: 'thin-strokes',
      grade: gradeOf(least < limits.stroke / 2),
      count: below(strokes.widths, limits.stroke),
      least,
      limit: limits.stroke,
    });
  }
  const { thin, lost } = whitesOf(check, limits);
  const { choke } = limits;
  if (lost > 0) found.push({ code: 'white-lost', grade: 'check', count: lost, choke });
  const [thinnest] = thin;
  if (thinnest !== undefined) {
    const white = { count: thin.length, least: thinnest, limit: limits.white, choke };
    found.push({ code: 'thin-white', grade: 'check', ...white });
  }
  const tiny = below(specks.widths, limits.stroke);
  if (tiny > 0) found.push({ code: 'specks', grade: 'check', count: tiny, limit: limits.stroke });
  const dots = smallDots(screens.dots, limits.stroke);
  if (dots) found.push({ code: 'screen-dots', grade: 'check', ...dots });
  const holes = smallDots(screens.holes, limits.opening);
  if (holes) found.push({ code: 'screen-holes', grade: 'check', ...holes });
  if (check.strays) {
    const { list, rest } = check.strays;
    const { width, height } = printed;
    const without = { width: um(width * rest.width), height: um(height * rest.height) };
    if (width - without.width > LARGER || height - without.height > LARGER) {
      const isMuch = Math.min(rest.width, rest.height) < 1 - MUCH_LARGER;
      const size = { width, height };
      found.push({ code: 'strays', grade: gradeOf(isMuch), count: list.length, size, without });
    }
  }
  const [narrowest] = openings.widths;
  if (narrowest !== undefined) {
    const count = openings.widths.length;
    found.push({ code: 'openings', grade: 'check', count, least: narrowest, limit: limits.opening });
  }
  const black = sums.bearing === 0 ? 0 : sums.black / sums.bearing;
  if (isBlackGarment(printed.shade) && black >= SOME_BLACK) {
    found.push({ code: 'black-on-black', grade: 'check', share: black });
  }
  if (facts.profile !== null) {
    const clipped = check.clipped?.share ?? null;
    const isKept = clipped !== null && clipped < SOME_CLIPPED;
    const { profile: name, inks = null } = facts;
    found.push({ code: 'profile', grade: isKept ? 'good' : 'check', name, inks, clipped });
  }
  if (facts.gamma !== null) found.push({ code: 'gamma', grade: 'check', gamma: facts.gamma });
  if (facts.animated) found.push({ code: 'animated', grade: 'check' });
  if (facts.outside > 0) found.push({ code: 'outside', grade: 'check', count: facts.outside });
  if (facts.deep) found.push({ code: 'deep', grade: 'good' });
  return found.sort((a, b) => GRADES.indexOf(b.grade) - GRADES.indexOf(a.grade));
}

const GRADES: readonly Grade[] = ['good', 'check', 'poor'];

/** The grade of a transfer: that of its worst finding. */
export const worstGrade = (findings: readonly Finding[]): Grade => findings[0]?.grade ?? 'good';
