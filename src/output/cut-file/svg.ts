import type { CutFile, CutRing } from './lines';

/** What is written in the head of a cut file, for people who open it. */
export interface CutFileWords {
  readonly title: string;
  /** Its unit, its layers and how the film lies. */
  readonly note: string;
}

/** Layers of the lines that are cut, and of the registration corners. */
export const LAYERS = { cut: 'CUT', corners: 'CORNERS' } as const;

/** A micrometre is finer than any knife. */
export const DECIMALS = 3;

const escaped = (text: string): string =>
  text.replace(/[<>&"]/g, (sign) => `&#${sign.charCodeAt(0)};`).replace(/\p{Cc}/gu, ' ');

/** A closed path (SVG 2, 9.3: the path data closes each line by `Z`). */
function pathOf(ring: CutRing): string {
  const points = ring.map(([x, y]) => `${x.toFixed(DECIMALS)} ${y.toFixed(DECIMALS)}`);
  return `<path d="M${points.join('L')}Z"/>`;
}

/**
 * The lines of a span as SVG (W3C, SVG 1.1 second edition; the same in SVG 2): the page is the film at its true size, one user unit a
 * millimetre, the leading edge at the top. A layer is a group of its name; the paths are in the order of the cuts.
 */
export function cutSvg({ width, height, copies, corners }: CutFile, { title, note }: CutFileWords): string {
  const [wide, tall] = [width, height].map((side) => side.toFixed(DECIMALS));
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="${wide}mm" height="${tall}mm" viewBox="0 0 ${wide} ${tall}" fill="none" stroke="#000" stroke-width="0.1">`,
    `<title>${escaped(title)}</title>`,
    `<desc>${escaped(note)}</desc>`,
    `<g id="${LAYERS.cut}">`,
    ...copies.map(
      ({ code, number, rings }) =>
        `<g><title>${escaped(`${code} ${number}`)}</title>${rings.map(pathOf).join('')}</g>`,
    ),
    '</g>',
    ...(corners.length > 0
      ? [`<g id="${LAYERS.corners}" stroke="#777">`, ...corners.map(pathOf), '</g>']
      : []),
    '</svg>',
    '',
  ].join('\n');
}
