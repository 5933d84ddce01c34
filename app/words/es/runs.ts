import type { Words } from '../en';
import { counted, listedUpTo } from '../format';

export const runs: Words['runs'] = {
  run: 'Tirada',
  title: 'Esta tirada',
  name: 'Nombre',
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
  takes: 'Incluir',
  takesAll: 'todas las copias listas',
  takesChosen: 'solo las copias elegidas',
  nothingWaits: 'Ninguna copia espera una tirada.',
  dueBy: 'Todo lo que se entrega hasta',
  takeDue: 'Tomar estas',
  onFilm: (count, ways) => `${counted(count, 'copia ya está', 'copias ya están', ways)} en una película`,
  taken: (taken, all) => `tomadas: ${taken} de ${all}`,
  remove: 'Quitar esta tirada',
  lock: 'Bloquear para imprimir',
  withoutArtwork: (names, ways) =>
    `Sin imagen: ${listedUpTo(4, names, 'más', ways)}. En la imagen para imprimir ${names.length > 1 ? 'quedan' : 'queda'} en blanco.`,
  lettingGo: (count, ways) =>
    `Fuera de la película quedan ${counted(count, 'copia elegida', 'copias elegidas', ways)} para esta tirada. Si se bloquea así, esperan a otra.`,
  unlock: 'Volver a borrador',
  lockedNote: (name) =>
    `${name} queda bloqueada para imprimir: los cambios posteriores en pedidos y película no la alteran. No se puede deshacer más allá de esto.`,
  printedTo: 'Impresa hasta …',
  printedToHere: (length) => `impresa hasta ${length}; solo se planifica lo que viene detrás`,
  printedToHint: 'Las copias que empiezan antes están hechas. El resto se puede distribuir de nuevo detrás.',
  printedToNote: 'Lo hecho se queda. Hay que distribuir el resto, con un pedido urgente si lo hay.',
  lengthPrinted: (unit) => `Impreso, desde el inicio de la tirada (${unit})`,
  sheetsPrinted: 'Hojas impresas',
  withinRun: (most) =>
    most === ''
      ? 'Hay que escribir un número de hojas dentro de esta tirada.'
      : `Hay que escribir una longitud mayor que cero y hasta los ${most} de la tirada.`,
  spoiled: 'Estropeada de – a …',
  from: (unit) => `Desde (${unit})`,
  to: (unit) => `Hasta (${unit})`,
  sheetNumber: 'hoja',
  stretchProblem: 'Hay que escribir dos puntos dentro de esta tirada, el segundo detrás del primero.',
  touched: (count, ways) => counted(count, 'copia afectada', 'copias afectadas', ways),
  putBack: 'Devolverlas a la lista',
  spoiledNote: (count, ways) =>
    `${counted(count, 'copia vuelve', 'copias vuelven', ways)} a la lista, y la película cuenta como gastada. Hay que distribuir otra vez para colocar lo que falta detrás.`,
  printedNote: (name) => `${name} está impresa; su película se descuenta del rollo.`,
  stepBack: 'Volver a bloqueada',
  leadOn: {
    draft: 'A la sala Película',
    locked: 'Todo impreso',
    printed: 'Todo curado',
    cured: 'Todo planchado',
    pressed: 'Cerrar la tirada',
    closed: 'Al registro',
  },
};
