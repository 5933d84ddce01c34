import type { Words } from '../en';
import { counted } from '../format';

export const untold: Words['untold'] = {
  title: '¿Sobre qué se plancha?',
  hint: (count, ways) =>
    `${counted(count, 'línea no indica', 'líneas no indican', ways)} el tejido, del que depende cuánto puede calentar la plancha.`,
  all: 'Para todas las líneas',
  choose: 'elegir',
  other: 'Si nadie lo sabe, hay que elegir «otra cosa»: se plancha con un calor que todos aguantan.',
};
