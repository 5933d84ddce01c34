import type { Finding } from '../../../src/artwork';
import {
  area,
  counted,
  fineLength,
  hex,
  inkArea,
  number,
  percent,
  shortLength,
  type Ways,
  whole,
} from '../format';

const places = (count: number, ways: Ways) => counted(count, 'place', 'places', ways);

const lines = (found: { readonly lines: number }, ways: Ways) =>
  `${number(found.lines, ways.locale, 0, 0)} lines an inch`;

interface Said {
  readonly what: string;
  readonly mend: string;
}

/** What a finding is, and what to do about it. */
function finding(found: Finding, ways: Ways): Said {
  switch (found.code) {
    case 'coarse': {
      const [x, y] = [whole(found.x, ways), whole(found.y, ways)];
      return {
        what: x === y ? `${x} pixels an inch at this size` : `${x} × ${y} pixels an inch at this size`,
        mend: 'Edges will look soft or stepped. Ask for a larger file, or print it smaller: 250 and over is good, below 150 is poor.',
      };
    }
    case 'stretched':
      return {
        what: `stretched by ${percent(found.share, ways)} along one side`,
        mend: `At this width the artwork is ${shortLength(found.height, ways)} high. Set that height in the list of orders.`,
      };
    case 'ground':
      return {
        what: `a solid background of ${hex(found.colour)} reaches all four edges`,
        mend: 'It would print as a full rectangle. Knock it out here, or export the artwork with a transparent background.',
      };
    case 'coarse-image':
      return {
        what: `a picture within the drawing has ${whole(found.ppi, ways)} pixels an inch at this size`,
        mend: 'It will look soft or stepped, though the rest is sharp. Ask for the picture larger, or print it smaller.',
      };
    case 'font':
      return {
        what: `text in ${counted(found.names.length, 'font', 'fonts', ways)} that is not here: ${found.names.join(', ')}`,
        mend: 'It prints in another font. Turn the text into paths, or embed the font, and export it again.',
      };
    case 'checkerboard':
      return {
        what: 'a checkerboard of greys is part of the image',
        mend: 'It stands for transparency on a screen, but it would print. Ask for the file with a transparent background.',
      };
    case 'fringe':
      return {
        what: `${percent(found.share, ways)} of the edges have a ${found.ground === '#ffffff' ? 'pale' : 'dark'} fringe`,
        mend: 'It is left of the background the design stood on, and shows on other garments. Take it off here.',
      };
    case 'see-through':
      return {
        what: `${percent(found.share, ways)} of the ink is semi-transparent`,
        mend: 'White shows through it as a fringe or haze. Make glows, shadows and soft edges solid, or break them into dots, here or in the file.',
      };
    case 'thin-strokes':
      return {
        what: `${counted(found.count, 'stroke', 'strokes', ways)} thinner than ${fineLength(found.limit, ways)}, the thinnest ${fineLength(found.least, ways)}`,
        mend: 'They may not hold powder and can wash off. Thicken them, or print it larger.',
      };
    case 'white-lost':
      return {
        what: `no white left under strokes or dots in ${places(found.count, ways)}`,
        mend: `The white is taken in by ${fineLength(found.choke, ways)} on each side, so colour there lies on the bare garment. Thicken the strokes, or choke less.`,
      };
    case 'thin-white':
      return {
        what: `white thinner than ${fineLength(found.limit, ways)} in ${places(found.count, ways)}, the thinnest ${fineLength(found.least, ways)}`,
        mend: `It is what the choke of ${fineLength(found.choke, ways)} a side leaves, and may not hold. Thicken the strokes, choke less, or print it larger.`,
      };
    case 'specks':
      return {
        what: `${counted(found.count, 'speck', 'specks', ways)} smaller than ${fineLength(found.limit, ways)}`,
        mend: 'Dots that small hold no powder. Remove them, or make them larger.',
      };
    case 'screen-dots':
      return {
        what: `a screen of ${lines(found, ways)}: ${whole(found.count, ways)} of its ${counted(found.dots, 'dot', 'dots', ways)} smaller than ${fineLength(found.limit, ways)}, the smallest ${fineLength(found.least, ways)}`,
        mend: 'Dots that small hold no powder, and the palest tones wash off. Use fewer lines, or begin with larger dots.',
      };
    case 'screen-holes':
      return {
        what: `a screen of ${lines(found, ways)}: ${whole(found.count, ways)} of its ${counted(found.dots, 'hole', 'holes', ways)} narrower than ${fineLength(found.limit, ways)}, the narrowest ${fineLength(found.least, ways)}`,
        mend: 'Powder may fill holes that narrow, and the darkest tones print solid. Use fewer lines, or end with larger holes.',
      };
    case 'strays':
      return {
        what: `${counted(found.count, 'stray', 'strays', ways)} far from the design ${found.count === 1 ? 'makes' : 'make'} it ${area(found.size.width, found.size.height, ways)} instead of ${area(found.without.width, found.without.height, ways)}`,
        mend: 'What is stray prints as dirt, and the design comes out smaller than you asked for. Take it off.',
      };
    case 'openings':
      return {
        what: `openings narrower than ${fineLength(found.limit, ways)} in ${places(found.count, ways)}, the narrowest ${fineLength(found.least, ways)}`,
        mend: 'Powder may fill them in. Open them up, or print it larger.',
      };
    case 'black-on-black':
      return {
        what: `${percent(found.share, ways)} of the ink is black, for a black garment`,
        mend: 'The garment itself can be that black: knock it out here, and the print is softer and takes less ink.',
      };
    case 'profile':
      if (found.inks === 'held') {
        return {
          what: `colours in four printing inks, by the profile “${found.name}”`,
          mend: 'They are brought to sRGB by that profile. Compare the preview with what the customer expects.',
        };
      }
      if (found.inks === 'assumed') {
        return {
          what: `colours in four printing inks, without a profile: ${found.name} is assumed`,
          mend: 'Colours may differ from what the customer sees. Ask for the file in sRGB, or with its profile.',
        };
      }
      if (found.clipped !== null && found.grade === 'good') {
        return {
          what: `colours in the profile “${found.name}”, all of them within sRGB`,
          mend: 'Nothing needs to be done: they are brought to sRGB as they are.',
        };
      }
      if (found.clipped !== null) {
        return {
          what: `colours in the profile “${found.name}”: ${percent(found.clipped, ways)} of the ink lies outside of sRGB`,
          mend: 'It is clipped to sRGB and prints duller than it was drawn. Choose colours within sRGB where that matters.',
        };
      }
      return {
        what: `colours in the profile “${found.name}”, not in sRGB`,
        mend: 'They are brought to sRGB, and what lies outside of it is dulled. Export it as sRGB to see what will print.',
      };
    case 'gamma':
      return {
        what: `stored with a gamma of ${number(found.gamma, ways.locale, 0, 3)}`,
        mend: 'It is shown and printed corrected; other software may leave that out. Export it as sRGB to be sure.',
      };
    case 'animated':
      return {
        what: 'an animation; only its first frame is printed',
        mend: 'Export the frame that you want as a still image.',
      };
    case 'deep':
      return {
        what: 'more than 8 bits a channel, printed as 8',
        mend: 'Nothing needs to be done: film shows no difference.',
      };
    case 'outside':
      return {
        what: `${counted(found.count, 'script or outside link', 'scripts or outside links', ways)} in the SVG`,
        mend: 'Nothing of it is run or fetched, so what it would draw is missing. Embed pictures, turn text into paths, and export again.',
      };
  }
}

/** What the window of a transfer's artwork says. */
export const artwork = {
  title: (name: string) => `${name}: what will print`,
  nothing: 'Nothing to mend: this will print as it is.',
  said: (found: Finding, ways: Ways): Said => finding(found, ways),
  findings: 'What was found',
  show: 'Show where',
  shown: 'Hide marks',
  meant: 'Intended',
  notMeant: 'Not intended',
  named: (act: string, what: string) => `${act}: ${what}`,
  picture: (name: string) => `${name} on the garment’s colour`,
  pictureMissing: 'The image could not be read. Give this transfer its artwork again.',
  loading: 'Reading the image…',
  checking: (share: string) => `Looking at every pixel, ${share}…`,
  stop: 'Stop',
  stopped: 'This artwork was not checked.',
  again: 'Check it',
  page: 'Page of the PDF',
  pageOf: (page: number, total: number, ways: Ways) => `${whole(page, ways)} of ${whole(total, ways)}`,
  layer: 'Show',
  layers: { print: 'what prints', white: 'the white under it' },
  whiteHint: (choke: string) =>
    `The white, taken in by ${choke} on each side. Where it is missing, colour lies on the bare garment.`,
  zoom: 'Zoom',
  zooms: {
    '1': 'whole artwork',
    '2': 'twice as large',
    '4': 'four times as large',
    '8': 'eight times as large',
  },
  measures: 'Measures of one copy',
  printed: 'Printed size',
  pixels: 'Pixels, trimmed',
  ppi: 'Pixels an inch',
  perInch: (x: number, y: number, ways: Ways) => `${whole(x, ways)} across, ${whole(y, ways)} down`,
  vector: 'drawn at any size',
  bearing: 'Film that bears ink',
  bearingShare: (mm2: number, share: number, ways: Ways) =>
    `${inkArea(mm2, ways)}, ${percent(share, ways)} of its box`,
  white: 'White',
  colour: 'Colour',
  outline: 'Outline, all edges',
  limits: 'Limits of this shop',
  limitsHint:
    'Strokes and openings: common practice, no source; set them by what your own film and powder hold. The choke is what your printer’s software takes off the white, and a white plane that is saved here.',
  stroke: 'Thinnest stroke',
  opening: 'Narrowest opening',
  choke: 'White choke a side',
  thinnestWhite: 'Thinnest white',
  tooWide: (most: string) => `That is wider than ${most}, more than any such limit.`,
};
