import type { Words } from '../en';
import { counted } from '../format';
import { runs as first } from './first-runs';

export const runs: Words['runs'] = {
  ...first,
  title: 'Esta tirada',
  name: 'Nombre',
  takes: 'Incluir',
  takesAll: 'todas las copias listas',
  takesChosen: 'solo las copias elegidas',
  nothingWaits: 'Ninguna copia espera una tirada.',
  dueBy: 'Todo lo que se entrega hasta',
  takeDue: 'Incluir estas',
  onFilm: (count, ways) => `${counted(count, 'copia ya está', 'copias ya están', ways)} en una película`,
  taken: (taken, all) => `incluidas: ${taken} de ${all}`,
  remove: 'Quitar esta tirada',
  printedToHint: 'Las copias que empiezan antes están hechas. El resto se puede distribuir de nuevo detrás.',
  printedToNote: 'Lo hecho se queda. Hay que distribuir el resto, con un pedido urgente si lo hay.',
  lengthPrinted: (unit) => `Impreso, desde el inicio de la tirada (${unit})`,
  sheetsPrinted: 'Hojas impresas',
  withinRun: (most) =>
    most === ''
      ? 'Hay que escribir un número de hojas dentro de esta tirada.'
      : `Hay que escribir una longitud mayor que cero y hasta los ${most} de la tirada.`,
  from: (unit) => `Desde (${unit})`,
  to: (unit) => `Hasta (${unit})`,
  sheetNumber: 'hoja',
  stretchProblem: 'Hay que escribir dos puntos dentro de esta tirada, el segundo detrás del primero.',
  touched: (count, ways) => counted(count, 'copia afectada', 'copias afectadas', ways),
  putBack: 'Devolverlas a la lista',
  spoiledNote: (count, ways) =>
    `${counted(count, 'copia vuelve', 'copias vuelven', ways)} a la lista, y la película cuenta como gastada. Hay que distribuir otra vez para colocar lo que falta detrás.`,
};
