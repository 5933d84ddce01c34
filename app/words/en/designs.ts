import type { DesignSize } from '../../../src/model';
import { counted, listedUpTo, type Ways } from '../format';

const copies = (count: number, ways: Ways) => counted(count, 'copy', 'copies', ways);

/** The words of the window that takes a design at several sizes. */
export const designs = {
  title: (name: string) => `${name}: sizes and copies`,
  hint: 'Heights follow the artwork. Widths are where shops commonly start; type over them.',
  known: 'This image is here already',
  more: (name: string) => `More copies of ${name}`,
  has: (size: string, count: number, ways: Ways) => `${size}, ${copies(count, ways)}`,
  size: 'Size',
  width: 'Width',
  height: 'Height',
  copies: 'Copies',
  moreCopies: 'More copies',
  sizes: {
    adult: 'adult',
    youth: 'youth',
    toddler: 'toddler',
    'left chest': 'left chest',
    sleeve: 'sleeve',
    'neck tag': 'neck tag',
  } satisfies Record<DesignSize, string>,
  own: 'as it is',
  widthOf: (size: string) => `Width, ${size}`,
  copiesOf: (size: string) => `Copies, ${size}`,
  countProblem: (most: string) => `Write a whole number up to ${most}, or nothing.`,
  add: (count: number, ways: Ways) => (count === 0 ? 'Add copies' : `Add ${copies(count, ways)}`),
  added: (name: string, count: number, ways: Ways) =>
    `${copies(count, ways)} of ${name} added. One undo takes all of them back.`,
  match: {
    title: (count: number, ways: Ways) => `Artwork for orders: ${counted(count, 'file', 'files', ways)}`,
    hint: 'Each file is set beside the transfer whose name is most like its own. Change what is not right.',
    unmatched: (names: readonly string[], ways: Ways) =>
      `Like no transfer, or like several: ${listedUpTo(6, names, 'more', ways)}. Choose by hand what each is.`,
    find: 'Find an order or transfer for the lists',
    nothing: 'leave out',
    newIn: (order: string) => `a new transfer of ${order}`,
    replaces: (transfer: string) => `${transfer} has artwork already; this takes its place.`,
    reading: 'Reading…',
    take: (count: number, ways: Ways) => `Take in ${counted(count, 'file', 'files', ways)}`,
  },
  several: 'Several sizes',
  addFile: 'Add a design',
  addFileTo: (order: string) => `Add a design to ${order}`,
  same: (transfer: string) => `That is the image ${transfer} has already. Nothing changed.`,
  wasKnown: (fileName: string, transfer: string) =>
    `${fileName} is the artwork of ${transfer} already, so it was not added again. Drop it alone to add copies or sizes.`,
  replaced: (transfer: string, placed: number, ways: Ways) =>
    placed === 0
      ? `The artwork of ${transfer} is replaced.`
      : `The artwork of ${transfer} is replaced; ${copies(placed, ways)} of it stay where they lie on the film.`,
  stretched: (transfer: string) =>
    `The new artwork of ${transfer} has other proportions than its typed size and would be stretched. Set its height by the artwork in its row; its copies stay where they lie if they still fit there.`,
  lockedKeeps: (transfer: string) => `Runs that are locked for print keep the image ${transfer} had.`,
};
