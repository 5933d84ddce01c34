import type { StockUnit } from '../../../src/model';
import { counted, filmLength, inkVolume, powderMass, type Ways, whole } from '../format';

const amount = (value: number, unit: StockUnit, ways: Ways): string => {
  const size = Math.abs(value);
  const told = {
    length: () => filmLength(size as Parameters<typeof filmLength>[0], ways),
    sheets: () => counted(size, 'sheet', 'sheets', ways),
    volume: () => inkVolume(size as Parameters<typeof inkVolume>[0], ways),
    mass: () => powderMass(size as Parameters<typeof powderMass>[0], ways),
    pieces: () => whole(size, ways),
  }[unit]();
  return value < 0 ? `−${told}` : told;
};

/** The Stock room and its ledger. */
export const stock = {
  amount,
  kindNames: {
    film: 'Film like one in stock',
    colour: 'Colour ink',
    white: 'White ink',
    powder: 'Powder',
    blank: 'Blanks to print on',
  },

  lastsAll: (left: string, runs: number, ways: Ways) =>
    `${left} left after all ${whole(runs, ways)} open runs on it.`,
  filmTooShort: (missing: string) => `The film will not last for this run: ${missing} too little.`,
  filmTooShortForWanted: (missing: string) =>
    `The film will not last for all that waits: at least ${missing} too little.`,
  filmTooShortForAll: (missing: string, runs: number, ways: Ways) =>
    `The film lasts for this run, not for all ${whole(runs, ways)} open runs on it: ${missing} too little.`,
  supplyShort: (name: string, present: string, needed: string) =>
    `${name}: ${present} in stock, this run takes about ${needed}.`,
};
