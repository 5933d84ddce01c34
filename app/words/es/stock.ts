import type { Words } from '../en';

export const stock: Words['stock'] = {
  title: 'Almacén',
};
