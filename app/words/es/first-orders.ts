import type { FirstWords } from '../en';
import { whole } from '../format';

export const orders: FirstWords['orders'] = {
  rush: 'urgente',
  noDue: 'sin fecha',
  dueOn: (day) => `entrega ${day}`,
  takenOff: (count, ways) =>
    count === 1
      ? 'Una copia ya no cabe donde estaba y ha salido de la película. Hay que distribuir otra vez, o deshacer.'
      : `${whole(count, ways)} copias ya no caben donde estaban y han salido de la película. Hay que distribuir otra vez, o deshacer.`,
};
