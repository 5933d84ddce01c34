import { counted, listed, type Ways, whole } from '../format';

/** Where the middle of a print lies on an adult's garment (common practice, no source). */
const placements: Readonly<Record<string, string>> = {
  'left chest':
    'centre 7–9 in (18–23 cm) below the shoulder seam at the collar, 4–6 in (10–15 cm) off the middle.',
  front: 'top edge 3 in (8 cm) below the collar, centred.',
  back: 'top edge 4 in (10 cm) below the collar, centred.',
  sleeve: 'centred on the fold, 1–2 in (3–5 cm) above the hem.',
  'neck tag': 'inside, 1 in (2.5 cm) below the collar seam, centred.',
};

/** The printed cards' part of the catalogue. */
export const cards = {
  title: 'Cards to print',
  back: 'Back',
  which: 'Card',
  kinds: {
    run: 'run card',
    day: 'the day’s chart',
    pick: 'pick list',
    care: 'care slips',
    packing: 'packing slips',
  },
  print: 'Print',
  dayTitle: (run: string) => `The day · ${run}`,
  runTitle: (run: string) => `Run card · ${run}`,
  runFacts: (copies: number, peel: string, made: string, ways: Ways) =>
    `${counted(copies, 'copy', 'copies', ways)} · film peels ${peel} · ${made}`,
  coated: 'coated side confirmed',
  edgeFlat: 'edge flat',
  bareCorner: 'a bare corner left to peel by',
  cureLook:
    'Good: glossy, like orange peel. Dull and grainy: cure on. Yellow, brittle: reprint. Oily: moisture.',
  transfersOnly: 'Transfers only: flat, dry, dated, not pressed.',
  together: (names: readonly string[], garments: number, ways: Ways) =>
    `Press together: ${names.join(' + ')}, ${counted(garments, 'garment', 'garments', ways)}.`,
  garment: (name: string, count: number, ways: Ways) => `${name} × ${whole(count, ways)}`,
  /** Where no garments are entered: as many as the most frequent transfer asks for. */
  garmentsAtLeast: (count: number, transfers: readonly string[], ways: Ways) =>
    `${counted(count, 'garment', 'garments', ways)} at least, for ${listed(transfers, ways)}`,
  /** The places that names of placements and transfers speak of, with their measures. */
  placements: (names: readonly string[]): [string, string][] =>
    Object.entries(placements).filter(([place]) => names.some((name) => name.toLowerCase().includes(place))),
  commonPractice: 'Common practice, no source.',
  pickTitle: (run: string) => `Pick list · ${run}`,
  replacement: (count: number, ways: Ways) =>
    `${counted(count, 'blank', 'blanks', ways)} more, for spoiled ones`,
  care: [
    'Wait 24 hours before the first wash.',
    'Wash inside out, cool, on a gentle cycle.',
    'No bleach, no softener.',
    'Dry in the air or cool.',
    'No iron on the print.',
  ],
  transferCare: [
    'Keep flat, dry and dark, in its bag.',
    'Press by the values on your film’s data sheet; try one on a scrap first.',
    'Hot platen: keep hands clear.',
  ],
  bagsFor: (code: string) => `Bags, ${code}`,
  partBag: (number: number, of: number, ways: Ways) =>
    `part of the order, bag ${whole(number, ways)} of ${whole(of, ways)} of this run`,
  bag: (number: number, of: number, ways: Ways) => `bag ${whole(number, ways)} of ${whole(of, ways)}`,
  noShopName: 'Slips carry the name and the mark of your shop once it is typed under',
  handovers: { collect: 'Is collected.', ship: 'Is shipped.' },
  stretched: 'stretched, and the print holds',
  flatAndDry: 'flat, dry and dated',
  counted: 'counted',
  packed: (when: string) => `Made out ${when}`,
};
