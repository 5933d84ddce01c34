import type { FirstWords } from '../en';
import { counted, filmLength, inkVolume, powderMass, type Ways, whole } from '../format';

const amount: FirstWords['stock']['amount'] = (value, unit, ways: Ways) => {
  const size = Math.abs(value);
  const told = {
    length: () => filmLength(size as Parameters<typeof filmLength>[0], ways),
    sheets: () => counted(size, 'hoja', 'hojas', ways),
    volume: () => inkVolume(size as Parameters<typeof inkVolume>[0], ways),
    mass: () => powderMass(size as Parameters<typeof powderMass>[0], ways),
    pieces: () => whole(size, ways),
  }[unit]();
  return value < 0 ? `−${told}` : told;
};

export const stock: FirstWords['stock'] = {
  amount,
  kindNames: {
    film: 'Película como una que ya hay',
    colour: 'Tinta de color',
    white: 'Tinta blanca',
    powder: 'Polvo',
    blank: 'Prendas para estampar',
  },
  lastsAll: (left, runs, ways) =>
    `Quedan ${left} después de las ${whole(runs, ways)} tiradas abiertas en ella.`,
  filmTooShort: (missing) => `La película no alcanza para esta tirada: faltan ${missing}.`,
  filmTooShortForWanted: (missing) =>
    `La película no alcanza para todo lo que espera: faltan ${missing} como mínimo.`,
  filmTooShortForAll: (missing, runs, ways) =>
    `La película alcanza para esta tirada, no para las ${whole(runs, ways)} abiertas en ella: faltan ${missing}.`,
  supplyShort: (name, present, needed) =>
    `${name}: hay ${present} en el almacén, y esta tirada gasta alrededor de ${needed}.`,
};
