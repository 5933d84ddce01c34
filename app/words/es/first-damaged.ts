import type { FirstWords } from '../en';
import { listedUpTo } from '../format';

export const damaged: FirstWords['damaged'] = {
  history:
    'Lo que se podía deshacer estaba dañado en el almacenamiento. Todo sigue como está, y se deshace desde aquí.',
  reconciled: (films, ways) =>
    `Los movimientos de alguna película no sumaban lo que queda de ella. Se añadió uno con la diferencia. Conviene contar: ${listedUpTo(4, films, 'más', ways)}.`,
};
