import { asId, type Press, type Printer, type Station, withPrinter } from '../../src/model';
import { startingPerson, startingStation } from '../../src/pressing';

/** So many presses, all of them the same but for what is told. */
export function presses(
  count: number,
  more: Partial<Press> = {},
  { presses: [like] }: Station = startingStation('C'),
): Pick<Station, 'presses'> {
  if (!like) throw new Error('no press');
  return {
    presses: Array.from({ length: count }, (_, at) => ({ ...like, ...more, id: asId(`press-${at + 1}`) })),
  };
}

/** The first printer with something else. */
export const printing = (
  more: Partial<Printer>,
  { printers }: Station = startingStation('C'),
): Pick<Station, 'printers'> => ({ printers: withPrinter(printers, { ...printers[0], ...more }) });

/** So many people who are there whenever the shop is open. */
export const people = (count: number): Pick<Station, 'people'> => ({
  people: Array.from({ length: count }, (_, at) => startingPerson(asId(`person-${at + 1}`))),
});
