import type { FirstWords } from '../en';

export const keep: FirstWords['keep'] = {
  save: 'Guardar una copia de seguridad',
  fileName: (day) => `rollwright copia de seguridad ${day}.zip`,
};
