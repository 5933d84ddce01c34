import type { PlaceName, Rest } from '../../../src/model';
import { counted, listed, type Ways, whole } from '../format';

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
  /** Garments of a line that are on a run, and how many there are in all where that is more. */
  garmentPart: (name: string, count: number, of: number, ways: Ways) =>
    count < of ? `${name} × ${whole(count, ways)} of ${whole(of, ways)}` : `${name} × ${whole(count, ways)}`,
  /** What of an order does not come with a run. */
  rest: ({ came, follows, waiting }: Rest, ways: Ways) =>
    [
      ...(came.length > 0 ? [`A part came in ${listed(came, ways)}.`] : []),
      ...(follows.length > 0 ? [`The rest follows in ${listed(follows, ways)}.`] : []),
      ...(waiting > 0 ? [`${counted(waiting, 'copy waits', 'copies wait', ways)} for a run.`] : []),
    ].join(' '),
  allTaken: 'Nothing to take: these garments were taken for an earlier run.',
  /** Where no garments are entered: as many as the most frequent transfer asks for. */
  garmentsAtLeast: (count: number, transfers: readonly string[], ways: Ways) =>
    `${counted(count, 'garment', 'garments', ways)} at least, for ${listed(transfers, ways)}`,
  /** Where a print lies: so far along from what the place is measured from, and so far off the middle. */
  measures: {
    'left chest': (along: string, aside: string) =>
      `centre ${along} below the shoulder seam at the collar, ${aside} off the middle.`,
    'right chest': (along: string, aside: string) =>
      `centre ${along} below the shoulder seam at the collar, ${aside} off the middle.`,
    front: (along: string) => `top edge ${along} below the collar, centred.`,
    back: (along: string) => `top edge ${along} below the collar, centred.`,
    sleeve: (along: string) => `centred on the fold, ${along} above the hem.`,
    'neck tag': (along: string) => `inside, ${along} below the collar seam, centred.`,
    pocket: (along: string) => `top edge ${along} below the pocket’s upper hem, centred on it.`,
    hood: (along: string) => `flat on its side, ${along} from the edge of the opening.`,
    leg: (along: string) => `on the thigh, top edge ${along} below the waistband.`,
    cap: (along: string) => `on the front panel, lower edge ${along} above the brim, centred.`,
    tote: (along: string) => `top edge ${along} below the opening, centred.`,
  } satisfies Record<PlaceName, (along: string, aside: string) => string>,
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
  transferCare: ['Keep flat, dry and dark, in its bag.', 'Hot platen: keep hands clear.'],
  /** For who presses transfers that are sold alone. */
  pressOn: (fabric: string, recipe: string) => `On ${fabric}: ${recipe}.`,
  pressTry:
    'Common practice or the values of this shop: try one on a scrap first. The film maker’s data sheet prevails.',
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
