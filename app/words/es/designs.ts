import type { Words } from '../en';
import { counted, listedUpTo } from '../format';
import { copies } from './counts';

export const designs: Words['designs'] = {
  title: (name) => `${name}: medidas y copias`,
  hint: 'El alto sigue al arte. Los anchos son los habituales para empezar; se pueden cambiar.',
  known: 'Esta imagen ya está aquí',
  more: (name) => `Más copias de ${name}`,
  has: (size, count, ways) => `${size}, ${copies(count, ways)}`,
  size: 'Medida',
  width: 'Ancho',
  height: 'Alto',
  copies: 'Copias',
  moreCopies: 'Más copias',
  sizes: {
    adult: 'adulto',
    youth: 'juvenil',
    toddler: 'infantil',
    'left chest': 'pecho izquierdo',
    sleeve: 'manga',
    'neck tag': 'etiqueta de cuello',
  },
  own: 'tal como está',
  widthOf: (size) => `Ancho, ${size}`,
  copiesOf: (size) => `Copias, ${size}`,
  countProblem: (most) => `Hay que escribir un número entero hasta ${most}, o nada.`,
  add: (count, ways) => (count === 0 ? 'Añadir copias' : `Añadir ${copies(count, ways)}`),
  added: (name, count, ways) =>
    `${counted(count, 'copia', 'copias', ways)} de ${name} añadidas. Deshacer una vez las quita todas.`,
  match: {
    title: (count, ways) => `Imágenes para los pedidos: ${counted(count, 'archivo', 'archivos', ways)}`,
    hint: 'Cada archivo está junto al transfer de nombre más parecido. Hay que cambiar lo que no sea así.',
    unmatched: (names, ways) =>
      `No se parecen a ningún transfer, o a varios: ${listedUpTo(6, names, 'más', ways)}. Hay que elegir a mano qué es cada uno.`,
    find: 'Buscar un pedido o transfer para las listas',
    nothing: 'no usar',
    newIn: (order) => `un transfer nuevo de ${order}`,
    replaces: (transfer) => `${transfer} ya tiene imagen; esta ocupa su lugar.`,
    reading: 'Leyendo…',
    take: (count, ways) => `Recibir ${counted(count, 'archivo', 'archivos', ways)}`,
  },
  several: 'Varias medidas',
  addFile: 'Añadir un diseño',
  addFileTo: (order) => `Añadir un diseño a ${order}`,
  same: (transfer) => `Esa es la imagen que ${transfer} ya tiene. No ha cambiado nada.`,
  wasKnown: (fileName, transfer) =>
    `${fileName} ya es el arte de ${transfer}, así que no se ha añadido otra vez. Hay que soltarlo solo para añadir copias o medidas.`,
  replaced: (transfer, placed, ways) =>
    placed === 0
      ? `El arte de ${transfer} se ha cambiado.`
      : `El arte de ${transfer} se ha cambiado; ${counted(placed, 'copia suya se queda donde está', 'copias suyas se quedan donde están', ways)} en la película.`,
  stretched: (transfer) =>
    `El arte nuevo de ${transfer} tiene otras proporciones que la medida escrita y saldría estirado. Hay que poner el alto según el arte en su fila; sus copias se quedan donde están si aún caben.`,
  lockedKeeps: (transfer) =>
    `Las tiradas bloqueadas para imprimir conservan la imagen que tenía ${transfer}.`,
};
