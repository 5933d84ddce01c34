import type { Words } from '../en';

export const spoil: Words['spoil'] = {
  title: 'Una copia se ha estropeado',
  copy: 'Copia',
  stage: 'Se estropeó',
  stages: {
    print: 'al imprimir',
    powder: 'al empolvar',
    cure: 'al curar',
    cut: 'al cortar',
    press: 'en la plancha',
  },
  reason: 'Por qué',
  otherReason: 'otro motivo',
  newReason: 'Otro motivo',
  reasonNeeded: 'Hay que decir por qué en una o dos palabras, para poder corregirlo.',
  garment: 'La prenda también se ha estropeado',
  save: 'Reimprimir',
  note: (name) => `${name} vuelve a la lista para otra tirada.`,
  onlyPrinted:
    'Una copia se da por estropeada cuando la tirada está impresa. Hasta entonces sirve «Estropeada de – a» en la sala Película.',
};
