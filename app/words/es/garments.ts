import type { Words } from '../en';
import { counted, whole } from '../format';
import { copies, transfers } from './counts';

export const grid: Words['grid'] = {
  title: (name) => `${name}: prendas y zonas`,
  hint: 'Cada zona se estampa en todas las prendas, con un ancho por grupo de tallas. De ahí salen los transfers y sus cantidades.',
  garments: 'Prendas',
  style: 'Modelo',
  aStyle: 'Camiseta',
  colour: 'Color',
  shade: 'Color en pantalla',
  size: 'Talla',
  howMany: 'Cuántas',
  addGarment: 'Añadir una línea',
  removeGarment: 'Quitar esta línea',
  placements: 'Zonas',
  place: 'Zona',
  design: 'Diseño',
  aDesign: 'diseño',
  places: {
    front: 'frente',
    back: 'espalda',
    'left chest': 'pecho izquierdo',
    sleeve: 'manga',
    'neck tag': 'etiqueta de cuello',
    'right chest': 'pecho derecho',
    pocket: 'bolsillo',
    hood: 'capucha',
    leg: 'pierna',
    cap: 'gorra',
    tote: 'bolsa de tela',
  },
  addPlacement: 'Añadir una zona',
  removePlacement: 'Quitar esta zona',
  groups: { adult: 'adulto', youth: 'juvenil', toddler: 'infantil' },
  sizeWidths: 'Ancho de cada talla',
  widthFor: (group) => `Ancho, ${group}`,
  adultHeight: 'Alto, adulto',
  printed: (width, count, sizes, ways) => `${width} de ancho: ${copies(count, ways)} para ${sizes}`,
  tooWide: (width, size) =>
    `${width} es más ancho de lo que admite una prenda de talla ${size} (práctica común). Hay que dar a su grupo un ancho propio.`,
};

export const names: Words['names'] = {
  title: (name) => `${name}: nombres y números`,
  hint: 'Hay que pegar una línea por prenda: nombre, número, talla, en cualquier orden. Cada una será un transfer y una prenda.',
  list: 'Nombres y números',
  style: 'Prenda',
  row: (name, number, size) => [name, number, size].filter(Boolean).join(' · '),
  more: (count, ways) => `y ${whole(count, ways)} más`,
  bad: (line) => `La línea ${line} no tiene nombre ni número, así que se omite.`,
  add: (count, ways) => `Añadir ${transfers(count, ways)}`,
  added: (count, ways) =>
    `${counted(count, 'transfer añadido, con su prenda', 'transfers añadidos, cada uno con su prenda', ways)}.`,
};
