import type { Words } from '../en';

export const grade: Words['grade'] = {
  names: { good: 'bien', meant: 'intencionado', check: 'revisar', poor: 'mal' },
  checking: 'revisando',
  notChecked: 'sin revisar',
  look: (name, told) => `Arte de ${name}: ${told}. Ver cómo saldrá`,
};
