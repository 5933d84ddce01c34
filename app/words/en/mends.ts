import type { Finding, InkChange } from '../../../src/artwork';
import type { Mend } from '../../../src/model';
import { fineLength, inkArea, number, type Ways, wholePercent } from '../format';

const lines = (screen: { readonly lines: number }, ways: Ways) =>
  `${number(screen.lines, ways.locale, 0, 0)} lines an inch`;

function title(mend: Mend, ways: Ways): string {
  switch (mend.kind) {
    case 'knock-out':
      return `Knocking ${mend.colour} out`;
    case 'take-off':
      return `Taking off what is smaller than ${fineLength(mend.largest, ways)}`;
    case 'thicken':
      return `Thickening strokes to ${fineLength(mend.to, ways)}`;
    case 'defringe':
      return mend.ground === '#ffffff' ? 'Taking a pale fringe off' : 'Taking a dark fringe off';
    case 'threshold':
      return 'Making what is semi-transparent solid';
    case 'screen':
      return 'Breaking what is semi-transparent into dots';
  }
}

function hint({ kind }: Mend): string {
  switch (kind) {
    case 'knock-out':
      return 'What turns to the garment’s colour will not print. The image you gave is kept.';
    case 'take-off':
      return 'What is gone from the picture will not print. Look that no dot of a letter is among it. The image you gave is kept.';
    case 'thicken':
      return 'Thin strokes grow to that width in their own colour. Look that no opening beside them closes. The image you gave is kept.';
    case 'defringe':
      return 'Edges take the colour of what lies behind them. The image you gave is kept.';
    case 'threshold':
      return 'What is fainter goes, what is stronger prints solid. Smooth edges stay. The image you gave is kept.';
    case 'screen':
      return 'Dots of full ink stand for the tone, and cover as much. Smooth edges stay. The image you gave is kept.';
  }
}

function done(mend: Mend, ways: Ways): string {
  switch (mend.kind) {
    case 'knock-out':
      return `Made here by knocking ${mend.colour} out.`;
    case 'take-off':
      return `Made here by taking off what is smaller than ${fineLength(mend.largest, ways)}.`;
    case 'thicken':
      return `Made here by thickening strokes to ${fineLength(mend.to, ways)}.`;
    case 'defringe':
      return 'Made here by taking the fringe off.';
    case 'threshold':
      return `Made here by making solid from ${wholePercent(mend.from, ways)} of opacity on.`;
    case 'screen':
      return `Made here by a screen of ${lines(mend, ways)} with dots from ${fineLength(mend.least, ways)} on.`;
  }
}

const names: Readonly<Record<Mend['kind'], string>> = {
  'knock-out': 'knocked out',
  'take-off': 'cleaned',
  thicken: 'thickened',
  defringe: 'fringe off',
  threshold: 'solid',
  screen: 'screened',
};

/** What is said of mending an artwork. */
export const mends = {
  /** The button beside a finding. */
  offer: (code: Finding['code']): string => {
    switch (code) {
      case 'ground':
        return 'Knock the background out …';
      case 'black-on-black':
        return 'Knock the black out …';
      case 'strays':
        return 'Take the strays off …';
      case 'specks':
        return 'Take the specks off …';
      case 'fringe':
        return 'Take the fringe off …';
      case 'see-through':
        return 'Make it solid, or dots …';
      default:
        return 'Thicken the strokes …';
    }
  },
  title: (mend: Mend, ways: Ways): string => title(mend, ways),
  hint: (mend: Mend): string => hint(mend),
  tolerance: 'Tolerance',
  enclosed: 'also where it is enclosed, as in letters',
  specksToo: 'also specks within the design',
  softHow: 'Semi-transparent ink',
  softHows: { threshold: 'solid or gone', screen: 'a screen of dots' },
  threshold: 'Solid from an opacity of',
  lines: 'Lines an inch',
  dots: (least: string) => `No dot and no hole smaller than ${least}: the limits of this shop.`,
  ink: ({ before, after }: InkChange, ways: Ways) =>
    `White ink ${inkArea(before.white, ways)}, then ${inkArea(after.white, ways)}; colour ${inkArea(before.colour, ways)}, then ${inkArea(after.colour, ways)}.`,
  use: 'Use this image',
  fileName: (fileName: string, kind: Mend['kind']) =>
    `${fileName.replace(/\.[a-z0-9]+$/i, '')}, ${names[kind]}.png`,
  inUse: (size: string) =>
    `The mended image is in use. The design keeps its size; what is left of the image prints at ${size}. Undo brings the other back.`,
  nothingLeft: 'Nothing of the image would be left. Choose to take out less.',
  tooLarge: 'This image is too large to be mended here. Export it at its printed size with 300 ppi first.',
  madeFrom: (mend: Mend, ways: Ways): string => done(mend, ways),
  backToFirst: 'Back to the image it was made from',
};
