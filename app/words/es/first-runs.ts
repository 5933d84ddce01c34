import type { FirstWords } from '../en';
import { counted, listedUpTo } from '../format';

export const runs: FirstWords['runs'] = {
  run: 'Tirada',
  add: 'una tirada nueva',
  numbered: (number) => `Tirada ${number}`,
  states: {
    draft: 'borrador',
    locked: 'bloqueada',
    printed: 'impresa',
    cured: 'curada',
    pressed: 'planchada',
    closed: 'cerrada',
  },
  choose: 'Elegir copias',
  lock: 'Bloquear para imprimir',
  withoutArtwork: (names, ways) =>
    `Sin imagen: ${listedUpTo(4, names, 'más', ways)}. En la imagen para imprimir ${names.length > 1 ? 'quedan' : 'queda'} en blanco.`,
  lettingGo: (count, ways) =>
    `Fuera de la película quedan ${counted(count, 'copia elegida', 'copias elegidas', ways)} para esta tirada. Si se bloquea así, esperan a otra.`,
  unlock: 'Volver a borrador',
  lockedNote: (name) =>
    `${name} queda bloqueada para imprimir: los cambios posteriores en pedidos y película no la alteran. No se puede deshacer más allá de esto.`,
  printedTo: 'Impresa hasta…',
  printedToHere: (length) => `impresa hasta ${length}; solo se planifica lo que viene detrás`,
  spoiled: 'Estropeada de – a…',
  printedNote: (name) => `${name} está impresa; su película se descuenta del rollo.`,
  stepBack: 'Volver a bloqueada',
  leadOn: {
    draft: 'Ir a la sala Película',
    locked: 'Todo impreso',
    printed: 'Todo curado',
    cured: 'Todo planchado',
    pressed: 'Cerrar la tirada',
    closed: 'Ir al registro',
  },
};
