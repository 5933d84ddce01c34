import type { PlaceName, SizeGroup } from '../../../src/model';
import { type Ways, whole } from '../format';
import { copies, transfers } from './counts';

export const grid = {
  title: (name: string) => `${name}: garments and placements`,
  hint: 'Each placement is printed on every garment, at a width for its group of sizes. The transfers and their counts follow.',
  garments: 'Garments',
  style: 'Style',
  aStyle: 'T-shirt',
  colour: 'Colour',
  shade: 'Colour on screen',
  size: 'Size',
  howMany: 'How many',
  addGarment: 'Add a line',
  removeGarment: 'Remove this line',
  placements: 'Placements',
  place: 'Placement',
  design: 'Design',
  aDesign: 'design',
  /** What a place is called on its transfers, too. */
  places: {
    front: 'front',
    back: 'back',
    'left chest': 'left chest',
    sleeve: 'sleeve',
    'neck tag': 'neck tag',
    'right chest': 'right chest',
    pocket: 'pocket',
    hood: 'hood',
    leg: 'leg',
    cap: 'cap',
    tote: 'tote',
  } satisfies Record<PlaceName, string>,
  addPlacement: 'Add a placement',
  removePlacement: 'Remove this placement',
  groups: { adult: 'adult', youth: 'youth', toddler: 'toddler' } satisfies Record<SizeGroup, string>,
  sizeWidths: 'Width of each size',
  widthFor: (group: string) => `Width, ${group}`,
  adultHeight: 'Height, adult',
  printed: (width: string, count: number, sizes: string, ways: Ways) =>
    `${width} wide: ${copies(count, ways)} for ${sizes}`,
  tooWide: (width: string, size: string) =>
    `${width} is wider than a garment of size ${size} takes (common practice). Give its group a width of its own.`,
};

export const names = {
  title: (name: string) => `${name}: names and numbers`,
  hint: 'Paste one line a garment: name, number, size, in any order. Each becomes one transfer and one garment.',
  list: 'Names and numbers',
  style: 'Garment',
  row: (name: string, number: string, size: string) => [name, number, size].filter(Boolean).join(' · '),
  more: (count: number, ways: Ways) => `and ${whole(count, ways)} more`,
  bad: (line: number) => `Line ${line} has neither a name nor a number, so it is left out.`,
  add: (count: number, ways: Ways) => `Add ${transfers(count, ways)}`,
  added: (count: number, ways: Ways) => `${transfers(count, ways)} added, each with its garment.`,
};
