import type { Words } from '../en';

export const numbered: Words['station']['numbered'] = {
  printer: (number) => `Impresora ${number}`,
  press: (number) => `Plancha ${number}`,
  oven: (number) => `Horno ${number}`,
  line: (number) => `Línea ${number}`,
  person: (number) => `Persona ${number}`,
};
