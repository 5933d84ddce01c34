import type { CellProblem, Column, TableReading } from '../../../src/intake';
import { MOST_COPIES, MOST_COPIES_IN_ALL } from '../../../src/intake/cells';
import { LONGEST_CELL, MOST_COLUMNS, MOST_ROWS, MOST_SIGNS } from '../../../src/intake/limits';
import type { Words } from '../en';
import { counted, type Ways, whole } from '../format';
import { copies, transfers } from './counts';
import { dateProblems, lengthProblems } from './problems';

const columns: Record<Column, string> = {
  order: 'Pedido',
  number: 'Número de pedido',
  customer: 'Cliente',
  contact: 'Contacto',
  email: 'Correo electrónico',
  transfer: 'Transfer',
  width: 'Ancho',
  height: 'Alto',
  size: 'Medida, ancho × alto',
  count: 'Cantidad',
  due: 'Entrega',
  turn: 'Se puede girar',
  fabric: 'Tejido',
  notes: 'Notas',
};

function countProblem(problem: Extract<CellProblem, { column: 'count' }>, ways: Ways): string {
  switch (problem.code) {
    case 'unreadable':
      return 'hay que escribir un número entero en cifras, como 12.';
    case 'zero':
      return 'tiene que haber al menos una copia.';
    case 'too-many':
      return `ningún transfer lleva más de ${whole(MOST_COPIES, ways)} copias; hay que revisar la cifra.`;
    case 'too-many-in-all':
      return `con estas, la tabla traería más de ${whole(MOST_COPIES_IN_ALL, ways)} copias; hay que añadirla por partes.`;
  }
}

/** One cell of a pasted table that could not be used: what stands there, and how to mend it. */
function cellProblem(problem: CellProblem, ways: Ways): string {
  const stands = 'text' in problem && problem.text !== '' ? ` «${problem.text}»` : '';
  const name = `${columns[problem.column]}${stands}:`;
  switch (problem.column) {
    case 'order':
      return `${name} hay que nombrar el pedido; una celda vacía vale por el pedido de arriba, y no lo hay.`;
    case 'transfer':
      return `${name} hay que nombrar el transfer, para distinguir sus copias.`;
    case 'width':
    case 'height':
      return `${name} ${lengthProblems[problem.code]}`;
    case 'size':
      return `${name} ${problem.code === 'unreadable' ? 'hay que escribir ancho por alto, como 28 x 33 cm.' : lengthProblems[problem.code]}`;
    case 'count':
      return `${name} ${countProblem(problem, ways)}`;
    case 'due':
      return `${name} ${dateProblems[problem.code]}`;
    case 'turn':
      return `${name} hay que escribir sí, no, media vuelta o libre.`;
    case 'fabric':
      return `${name} hay que escribir de qué es, como algodón, 50/50, poliéster u otro.`;
  }
}

/** What keeps a table from being read. */
function problemOf(problem: NonNullable<TableReading['problem']>, ways: Ways): string {
  switch (problem.code) {
    case 'missing-columns':
      return `En los títulos falta una columna para ${problem.columns.map((column) => columns[column].toLowerCase()).join(', ')}. Hay que añadirla, o quitar los títulos y seguir el orden de columnas indicado arriba.`;
    case 'too-long':
      return `La tabla tiene más de ${whole(MOST_SIGNS, ways)} caracteres. Hay que añadirla por partes.`;
    case 'many-rows':
      return `La tabla tiene más de ${whole(MOST_ROWS, ways)} filas. Hay que añadirla por partes.`;
    case 'many-columns':
      return `La fila ${problem.line} tiene más de ${whole(MOST_COLUMNS, ways)} columnas. Hay que quitar las que no hagan falta.`;
    case 'long-cell':
      return `La fila ${problem.line} tiene una celda de más de ${whole(LONGEST_CELL, ways)} caracteres. Hay que cerrar sus comillas, o acortarla.`;
  }
}

export const table: Words['table'] = {
  mapTitle: (used, unused, ways) =>
    unused === 0
      ? `Columnas: se usan todas (${whole(used, ways)})`
      : `Columnas: ${whole(used, ways)} en uso, ${whole(unused, ways)} sin usar`,
  mapKept: 'Lo que se elige aquí se recuerda para tablas con los mismos títulos.',
  mapTo: (heading) => `«${heading}» es`,
  notUsed: 'sin usar',
  columns,
  title: 'Pegar una tabla de pedidos',
  hint: 'Un transfer por fila: pedido, transfer, ancho, alto, cantidad, entrega, se puede girar. Con títulos, también número de pedido, cliente, contacto, correo, tejido y notas, en cualquier orden. Las medidas pueden escribirse como 89 mm, 8,9 cm, 3.5in, 3 1/2" o 28 x 33 cm.',
  label: 'Tabla',
  empty: 'Hay que pegar una tabla, o escribir filas separadas por comas, puntos y comas o tabuladores.',
  size: 'Medida',
  problem: problemOf,
  limits: (ways) =>
    `Se leen como mucho ${whole(MOST_ROWS, ways)} filas y ${whole(MOST_COLUMNS, ways)} columnas a la vez, con ${whole(LONGEST_CELL, ways)} caracteres por celda.`,
  notShown:
    'La tabla es demasiado larga para corregirla aquí. Hay que corregirla en la hoja de cálculo y abrirla otra vez.',
  isRead: (share) => `Leído el ${share} de la tabla`,
  stop: 'Dejar de leer',
  stopped: 'La tabla no está leída. No se ha añadido nada.',
  readAgain: 'Leerla otra vez',
  cellProblem,
  understood: (count, ways) => counted(count, 'fila entendida', 'filas entendidas', ways),
  bad: (count, ways) => `${counted(count, 'fila', 'filas', ways)} por corregir`,
  mendAll: 'Lo mismo en varias filas',
  readAs: (column, text) =>
    text === '' ? `Donde «${column}» está vacío, leer` : `Leer «${text}» de «${column}» como`,
  inRows: (count, ways) => `En ${counted(count, 'fila', 'filas', ways)}`,
  isReadAs: (column, text, as) => `${column}: «${text}» se lee como «${as}».`,
  takeBack: 'Deshacerlo',
  row: 'Fila',
  inDatesSuchAs: (date) => `En fechas como ${date}`,
  twoDays: (date) => `${date} puede ser dos días distintos. Se puede cambiar aquí si es el otro.`,
  doubts: {
    'past-due': (count, ways) =>
      `${counted(count, 'fila tiene', 'filas tienen', ways)} una fecha de entrega ya pasada.`,
    'no-count': (count, ways) =>
      `${counted(count, 'fila no tiene', 'filas no tienen', ways)} cantidad; se toma una copia.`,
    'no-height': (count, ways) =>
      `${counted(count, 'fila no tiene', 'filas no tienen', ways)} alto; lo da el arte, y hasta entonces es como el ancho.`,
  },
  onLines: (lines, more, ways) =>
    more > 0
      ? `(Filas ${lines.join(', ')} y ${whole(more, ways)} más)`
      : `(${lines.length === 1 ? 'Fila' : 'Filas'} ${lines.join(', ')})`,
  badRow: (line) => `Fila ${line}`,
  again: {
    title: (count, ways) => counted(count, 'fila ya está', 'filas ya están', ways),
    forAll: 'Con todas ellas:',
    all: { skip: 'Saltarlas', replace: 'Sustituir', add: 'Añadirlas' },
    label: (line) => `Qué hacer con la fila ${line}`,
    answers: {
      ask: 'elegir',
      skip: 'saltar la fila',
      replace: 'sustituir lo que hay',
      add: 'añadirla también',
    },
    inBook: (archived) => (archived ? 'En el archivo:' : 'En los pedidos:'),
    inRow: (line) => `En la fila ${line}:`,
    here: 'En esta fila:',
    copies: (count, ways) => copies(count, ways),
    inPrint: (least, count, ways) =>
      `No se puede sustituir por ${whole(count, ways)}: ${counted(least, 'copia está impresa o enviada', 'copias están impresas o enviadas', ways)} a imprimir.`,
    open: (count, ways) =>
      `Hay que elegir qué hacer con ${counted(count, 'fila que ya está', 'filas que ya están', ways)}.`,
  },
  add: ({ added, replaced, skipped }, ways) => {
    if (replaced > 0) {
      const replace = `sustituir ${transfers(replaced, ways)}`;
      return added > 0
        ? `Añadir ${whole(added, ways)}, ${replace}`
        : `${replace.charAt(0).toUpperCase()}${replace.slice(1)}`;
    }
    return added === 0 && skipped > 0 ? 'Dejar todo como está' : `Añadir ${transfers(added, ways)}`;
  },
  added: ({ added, replaced, skipped }, bad, ways) =>
    [
      ...(added > 0 || replaced + skipped === 0
        ? [`${counted(added, 'transfer añadido', 'transfers añadidos', ways)}.`]
        : []),
      ...(replaced > 0
        ? [`${counted(replaced, 'transfer sustituido', 'transfers sustituidos', ways)}.`]
        : []),
      ...(skipped > 0 ? [`${counted(skipped, 'fila saltada', 'filas saltadas', ways)}.`] : []),
      ...(bad > 0
        ? [`${counted(bad, 'fila por corregir sigue', 'filas por corregir siguen', ways)} en el recuadro.`]
        : []),
    ].join(' '),
  unreadableFile: (name) =>
    `${name} no es una tabla de texto. Hay que guardar la hoja de cálculo como CSV (con comas o puntos y comas) y abrir ese archivo.`,
};
