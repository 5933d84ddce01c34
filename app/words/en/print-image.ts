import type { Part } from '../../../src/output/print-image';
import type { ImageProblem } from '../../../src/output/print-image/browser';
import { counted, roughSize, type Ways } from '../format';

const images = (count: number, ways: Ways) => counted(count, 'image', 'images', ways);

const partNames = {
  run: () => '',
  chosen: () => ' chosen copies',
  span: (count: number) => ` span ${count}`,
  sheet: (count: number) => ` sheet ${count}`,
};

/** The words of the window that writes print-ready images. */
export const printImage = {
  title: 'Print-ready image',
  what: 'What is saved',
  whats: {
    run: 'the whole run, one image',
    rest: 'what is not printed yet, one image',
    spans: (count: number, ways: Ways) => `each span by itself: ${images(count, ways)}`,
    sheets: (count: number, ways: Ways) => `every sheet: ${images(count, ways)}`,
    span: (count: number) => `span ${count} only`,
    sheet: (count: number) => `sheet ${count} only`,
    chosen: (count: number, ways: Ways) =>
      `${counted(count, 'copy that is selected', 'copies that are selected', ways)}`,
  },
  askedOnce: 'Asked once: what is saved here, the day’s plan and the blank film follow it.',
  cutsLose:
    'Each cut loses the film from print head to knife, and this run is laid out without it. Put it in as “Blank per cut” of the film.',
  liesWet: (time: string, limit: string) =>
    `Sent without a pause, its first ink would lie wet for ${time}, not ${limit} at most. Save each span by itself, or lock a shorter run.`,
  ppi: 'Pixels an inch',
  ppiHint: '300 for most work; never above what the printer prints at.',
  ppiProblem: (least: string, most: string) => `Write a whole number from ${least} to ${most}.`,
  form: 'File',
  forms: { png: 'PNG', pdf: 'PDF, one page of true size', tiff: 'TIFF' },
  tooLarge: {
    pdf: (longest: string) =>
      `A PDF page holds up to ${longest} and 60 million pixels. What is larger is saved as PNG; save one span at a time for PDF.`,
    tiff: () =>
      'A TIFF holds up to 4 GB, some 850 million pixels. What is larger is saved as PNG; save one span at a time for TIFF.',
  },
  whiteTitle: 'White ink',
  white: 'Save the white too, choked',
  whiteHints: {
    png: 'As a grey PNG of the same size beside the image. It is white where white ink is full, black where there is none.',
    pdf: 'As a spot colour of its own, set to overprint. Its tint is how much white there is.',
    tiff: 'As an extra channel behind the colours and their transparency: 255 where white ink is full.',
  },
  choke: 'White choke a side',
  chokeHint: 'The same as in the limits of this shop.',
  whiteName: 'Name of the white',
  whiteNameHint: 'As your printer’s software looks for it.',
  whiteNameProblem: 'Write up to 60 plain letters or figures, and no name of a process colour.',
  whiteFile: (name: string): string => name.replace(/\.png$/, ' white.png'),
  mirror: 'Mirror the image',
  mirrorHint: 'Leave this off where the printer’s own software mirrors, as is usual. The test strip tells.',
  wouldRead:
    'By the test strip the film would come out readable, ink up, and press mirrored. Switch mirroring the other way, or print the strip again.',
  turnedRound:
    'Turned half round, since this printer prints the far end of an image first: the run’s start comes out first.',
  feed: 'Make up for the feed in the image',
  feedHint: (long: string) =>
    `By the test strip the printer’s feed is ${long} of the length. The image is divided by it, and the cut map follows.`,
  feedUnknown: 'The test strip has not been measured, so there is nothing to make up for.',
  marks: 'Marks in the waste',
  marksHint: 'Marks take powder as everything printed does. They read with the run’s start at the top.',
  corners: 'Registration corners for a contour cutter, in the waste of each span',
  ticks: 'Bars at the edges where the knife lines are',
  numbers: (tall: string) => `Each copy’s number in the gap beside it, ${tall} tall`,
  names: 'The names of order and transfer with it, where there is room',
  unnumbered: (count: number, ways: Ways) =>
    `${counted(count, 'copy has', 'copies have', ways)} no room for a number in the gap.`,
  ink: 'The image holds the colours on a transparent background. White ink and its choke are made by the printer’s own software.',
  inkWithWhite:
    'Switch off the white and the choke that your printer’s software makes by itself, and print a test strip first.',
  file: (pixels: string, size: string) => `${pixels} pixels, ${size}`,
  more: (count: number, ways: Ways) => `and ${images(count, ways)} more`,
  about: (bytes: number, ways: Ways) => `About ${roughSize(bytes, ways)} in all.`,
  loading: 'Looking for the artwork…',
  noArtwork: (names: string) =>
    `No artwork: ${names}. Give it to the transfer in the Orders room, or leave its copies blank.`,
  lostArtwork: (names: string) =>
    `The artwork is no longer on this device: ${names}. Drop it on the transfer again, or leave its copies blank.`,
  leaveBlank: 'Leave these blank on the film',
  write: 'Save image',
  writeAll: (count: number, ways: Ways) => `Save ${images(count, ways)}`,
  stop: 'Stop',
  writing: 'Saving the image',
  goesOn: 'You can go on working meanwhile.',
  noFiles:
    'This browser cannot save an image of this size. Open Rollwright in a current browser, and not in a private window.',
  notNoted: 'This tab only shows by now, so the image is not noted on its run. Save it again where you work.',
  saved: (names: readonly string[], ways: Ways) =>
    names.length === 1 ? `${names[0]} is saved.` : `${images(names.length, ways)} are saved.`,
  stoppedNote: 'Stopped. No half image was left behind.',
  problems: (problem: ImageProblem, name: string): string => {
    switch (problem.code) {
      case 'stopped':
        return printImage.stoppedNote;
      case 'disk-full':
        return 'The disk is full, so the image was not saved. Free some space, or save one span at a time, and try again.';
      case 'not-written':
        return 'The image could not be saved. See that the folder may be written to, and try again.';
      case 'artwork':
        return `The image was not saved: the artwork ${name} cannot be read any more. Drop it on its transfer again.`;
    }
  },
  fileName: (run: string, part: Part, kind: string): string =>
    `${run}${'number' in part ? partNames[part.kind](part.number) : partNames[part.kind]()}.${kind}`,
};
