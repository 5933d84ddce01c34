import type { Words } from '../en';
import { counted, listed, listedUpTo, type Ways } from '../format';

const of =
  (one: string, many: string) =>
  (count: number, ways: Ways): string =>
    counted(count, one, many, ways);

const records: Words['damaged']['records'] = {
  order: of('pedido', 'pedidos'),
  transfer: of('transfer', 'transfers'),
  garment: of('línea de prendas', 'líneas de prendas'),
  placement: of('zona en prendas', 'zonas en prendas'),
  copy: of('copia', 'copias'),
  artwork: of('imagen', 'imágenes'),
  film: of('película', 'películas'),
  run: of('tanda', 'tandas'),
  recipe: of('receta', 'recetas'),
  tick: of('marca', 'marcas'),
  spoilage: of('copia estropeada', 'copias estropeadas'),
  aside: of('entrega apartada', 'entregas apartadas'),
  shelf: of('transfer en el estante', 'transfers en el estante'),
  reopened: of('registro de tanda reabierta', 'registros de tandas reabiertas'),
  closing: of('registro de tanda cerrada', 'registros de tandas cerradas'),
  item: of('artículo del almacén', 'artículos del almacén'),
  entry: of('movimiento de almacén', 'movimientos de almacén'),
  calibration: of('calibración', 'calibraciones'),
  leftOut: of('tanda excluida de una calibración', 'tandas excluidas de calibraciones'),
  check: of('revisión de mantenimiento', 'revisiones de mantenimiento'),
  upkeep: of('nota de mantenimiento', 'notas de mantenimiento'),
  reading: of('lectura del aire', 'lecturas del aire'),
  quote: of('presupuesto', 'presupuestos'),
  step: of('paso de deshacer', 'pasos de deshacer'),
  settings: of('registro de ajustes', 'registros de ajustes'),
};

const settings: Words['damaged']['settings'] = {
  language: 'idioma',
  unit: 'unidad de longitud',
  currency: 'moneda',
  dateOrder: 'orden de las fechas',
  paper: 'papel',
  mapView: 'vista del mapa de corte',
  mapPaper: 'mapa de corte en papel',
  printer: 'impresora',
  limits: 'límites de los diseños',
  printImage: 'imagen para imprimir',
  station: 'máquinas',
  shelfFirst: 'uso del estante',
  rates: 'tinta y polvo',
  costs: 'costes',
  pricing: 'precios',
  alternatives: 'estampados comprados',
  letterhead: 'membrete',
  lastBackup: 'fecha de la última copia de seguridad',
  columns: 'encabezados de tablas',
  tables: 'qué significan los títulos de las tablas',
  changed: 'fecha del último cambio',
};

export const damaged: Words['damaged'] = {
  said: 'Parte de lo guardado no se ha podido leer. Queda intacto en el almacenamiento; todo lo demás está aquí.',
  which: 'Lo que no se ha podido leer',
  history:
    'Lo que se podía deshacer estaba dañado en el almacenamiento. Todo sigue como está; deshacer empieza de nuevo.',
  records,
  other: (count, ways) => counted(count, 'otra entrada', 'otras entradas', ways),
  named: (what, names, ways) => (names.length > 0 ? `${what}: ${listed(names, ways)}` : what),
  settings,
  fellBack: (fields, ways) =>
    `Los ajustes que no se han podido leer son los de un taller nuevo: ${listed(fields, ways)}. Conviene revisarlos.`,
  reconciled: (films, ways) =>
    `Los movimientos de alguna película no sumaban lo que queda de ella. Se añadió uno con la diferencia. Conviene contar: ${listedUpTo(4, films, 'más', ways)}.`,
};
