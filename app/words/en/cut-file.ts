import type { CutFile } from '../../../src/output/cut-file';
import { counted, type Ways } from '../format';

/** The words of the window that writes the lines for a contour cutter. */
export const cutFile = {
  title: 'Cut file',
  lead: 'The line around every copy, half a gap from what prints, at true size, for a contour cutter. Copies come in the order in which they are cut.',
  form: 'File',
  forms: { svg: 'SVG', dxf: 'DXF, release 12, in millimetres' },
  view: 'The film lies',
  corners: 'Registration corners in the waste',
  cornersHint:
    'L-shaped corners that the print-ready image and this file both hold. Save the image with them too.',
  noCorners: (count: number, ways: Ways) =>
    `${counted(count, 'corner has', 'corners have', ways)} no room in the waste: left out of image and file.`,
  boxed: (count: number, ways: Ways) =>
    `${counted(count, 'copy has', 'copies have', ways)} no outline and will be cut around the box.`,
  loose: (count: number, ways: Ways) =>
    `${counted(count, 'copy falls', 'copies fall', ways)} into several pieces when cut. Join the parts in the artwork, or cut wider by hand.`,
  lies: {
    plain: 'The lines are as on screen, not mirrored.',
    mirrored: 'The lines are mirrored across the film.',
  },
  caution:
    'Try the lines on scrap first. The blade is sharp and moves by itself: keep hands away, and follow the cutter maker’s manual.',
  save: 'Save cut file',
  saveAll: (count: number, ways: Ways) =>
    `Save ${counted(count, 'cut file', 'cut files', ways)} in one archive`,
  saved: (file: string) => `${file} is saved with your downloads.`,
  note: (cut: string, corners: string, lies: string) =>
    `All lengths are millimetres at true size. ${cut}: lines to cut, in their order. ${corners}: printed corners, not to be cut. ${lies}`,
  fileName: (run: string, part: Pick<CutFile, 'kind' | 'number'> | null) =>
    `cut file ${run}${part === null ? '' : ` ${part.kind} ${part.number}`}`,
};
