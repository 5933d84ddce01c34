import type { Words } from '../en';
import { counted, listed, type Ways } from '../format';
import { damaged as first } from './first-damaged';

const of =
  (one: string, many: string) =>
  (count: number, ways: Ways): string =>
    counted(count, one, many, ways);

const records: Words['damaged']['records'] = {
  order: of('pedido', 'pedidos'),
  transfer: of('transfer', 'transfers'),
  garment: of('línea de prendas', 'líneas de prendas'),
  placement: of('zona de estampado', 'zonas de estampado'),
  copy: of('copia', 'copias'),
  artwork: of('imagen', 'imágenes'),
  film: of('película', 'películas'),
  run: of('tirada', 'tiradas'),
  recipe: of('receta', 'recetas'),
  tick: of('marca', 'marcas'),
  spoilage: of('copia estropeada', 'copias estropeadas'),
  aside: of('traspaso apartado', 'traspasos apartados'),
  shelf: of('transfer en el estante', 'transfers en el estante'),
  reopened: of('registro de tirada reabierta', 'registros de tiradas reabiertas'),
  closing: of('registro de tirada cerrada', 'registros de tiradas cerradas'),
  item: of('artículo del almacén', 'artículos del almacén'),
  entry: of('movimiento de almacén', 'movimientos de almacén'),
  calibration: of('calibración', 'calibraciones'),
  leftOut: of('tirada excluida de una calibración', 'tiradas excluidas de calibraciones'),
  check: of('revisión de mantenimiento', 'revisiones de mantenimiento'),
  upkeep: of('nota de mantenimiento', 'notas de mantenimiento'),
  reading: of('medida del ambiente', 'medidas del ambiente'),
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
  mapView: 'vista del plano de corte',
  mapPaper: 'plano de corte en papel',
  limits: 'límites del arte',
  printImage: 'imagen para imprimir',
  cutFile: 'cómo se escriben los archivos de corte',
  station: 'máquinas',
  runOrder: 'orden de las tiradas',
  shelfFirst: 'uso del estante',
  rates: 'tinta y polvo',
  costs: 'costos',
  pricing: 'precios',
  alternatives: 'estampados comprados',
  letterhead: 'membrete',
  mark: 'marca del taller',
  lastBackup: 'fecha de la última copia de seguridad',
  columns: 'títulos de las tablas',
  tables: 'qué significan los títulos de las tablas',
  changed: 'fecha del último cambio',
};

export const damaged: Words['damaged'] = {
  ...first,
  said: 'Parte de lo guardado no se ha podido leer. Queda intacto en el almacenamiento; todo lo demás está aquí.',
  which: 'Lo que no se ha podido leer',
  noRun:
    'Aquí no hay ninguna tirada abierta: la que había no se ha podido leer o no ha venido. Los pedidos siguen como estaban.',
  beginRun: 'Empezar una tirada',
  records,
  other: (count, ways) => counted(count, 'otra entrada', 'otras entradas', ways),
  named: (what, names, ways) => (names.length > 0 ? `${what}: ${listed(names, ways)}` : what),
  settings,
  fellBack: (fields, ways) =>
    `Los ajustes que no se han podido leer son los de un taller nuevo: ${listed(fields, ways)}. Conviene revisarlos.`,
};
