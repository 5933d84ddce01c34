import type { CellProblem, Column } from '../../../src/intake';
import { MOST_COPIES, MOST_COPIES_IN_ALL } from '../../../src/intake/cells';
import type { Words } from '../en';
import { counted, type Ways, whole } from '../format';
import { transfers } from './counts';
import { dateProblems, lengthProblems } from './problems';

const columns: Record<Column, string> = {
  order: 'Pedido',
  transfer: 'Transfer',
  width: 'Ancho',
  height: 'Alto',
  count: 'Cantidad',
  due: 'Entrega',
  turn: 'Se puede girar',
};

function countProblem(problem: Extract<CellProblem, { column: 'count' }>, ways: Ways): string {
  switch (problem.code) {
    case 'unreadable':
      return 'escribir un número entero en cifras, como 12.';
    case 'zero':
      return 'tiene que haber al menos una copia.';
    case 'too-many':
      return `ningún transfer lleva más de ${whole(MOST_COPIES, ways)} copias; revisar la cifra.`;
    case 'too-many-in-all':
      return `con estas, la tabla traería más de ${whole(MOST_COPIES_IN_ALL, ways)} copias; añadirla por partes.`;
  }
}

/** One cell of a pasted table that could not be used: what stands there, and how to mend it. */
function cellProblem(problem: CellProblem, ways: Ways): string {
  const stands = 'text' in problem && problem.text !== '' ? ` «${problem.text}»` : '';
  const name = `${columns[problem.column]}${stands}:`;
  switch (problem.column) {
    case 'order':
      return `${name} nombrar el pedido; una celda vacía vale por el pedido de arriba, y no lo hay.`;
    case 'transfer':
      return `${name} nombrar el transfer, para distinguir sus copias.`;
    case 'width':
    case 'height':
      return `${name} ${lengthProblems[problem.code]}`;
    case 'count':
      return `${name} ${countProblem(problem, ways)}`;
    case 'due':
      return `${name} ${dateProblems[problem.code]}`;
    case 'turn':
      return `${name} escribir sí o no.`;
  }
}

export const table: Words['table'] = {
  mapTitle: 'Columnas que no se conocen',
  mapTo: (heading) => `«${heading}» es`,
  notUsed: 'sin usar',
  columns,
  title: 'Pegar una tabla de pedidos',
  hint: 'Un transfer por fila: pedido, transfer, ancho, alto, cantidad, entrega, se puede girar. La fila de títulos se reconoce. Las medidas pueden escribirse como 89 mm, 8,9 cm, 3.5in o 3 1/2".',
  label: 'Tabla',
  empty: 'Pegar una tabla, o escribir filas separadas por comas, puntos y comas o tabuladores.',
  size: 'Medida',
  missingColumns: (missing) =>
    `En los títulos falta una columna para ${missing.map((column) => columns[column].toLowerCase()).join(', ')}. Añadirla, o quitar los títulos y seguir el orden de columnas indicado arriba.`,
  cellProblem,
  understood: (count, ways) => counted(count, 'fila entendida', 'filas entendidas', ways),
  bad: (count, ways) => `${counted(count, 'fila', 'filas', ways)} por corregir`,
  badRow: (line) => `Fila ${line}`,
  add: (count, ways) => `Añadir ${transfers(count, ways)}`,
  added: (count, bad, ways) => {
    const added = `${counted(count, 'transfer añadido', 'transfers añadidos', ways)}.`;
    return bad === 0
      ? added
      : `${added} ${counted(bad, 'fila por corregir sigue', 'filas por corregir siguen', ways)} en el recuadro.`;
  },
  unreadableFile: (name) =>
    `${name} no es una tabla de texto. Guardar la hoja de cálculo como CSV (con comas o puntos y comas) y abrir ese archivo.`,
};
