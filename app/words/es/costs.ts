import type { CostKind, Gap, SharedBy } from '../../../src/costing';
import type { Words } from '../en';
import { counted, partly, type Ways, whole } from '../format';
import { copies } from './counts';

const kinds: Record<CostKind, string> = {
  film: 'Película',
  'colour-ink': 'Tinta de color',
  'white-ink': 'Tinta blanca',
  powder: 'Polvo',
  maintenance: 'Tinta para mantener limpios los cabezales',
  'printer-power': 'Electricidad, impresora',
  'oven-power': 'Electricidad, horno',
  'press-power': 'Electricidad, plancha',
  artwork: 'Mano de obra: pedidos y arte',
  printing: 'Mano de obra: película e impresión',
  cutting: 'Mano de obra: separar',
  pressing: 'Mano de obra: planchar',
  packing: 'Mano de obra: empacar',
  garments: 'Prendas',
  replacements: 'Prendas para reponer las estropeadas',
  spoilage: 'Previsión de estropeados',
  overhead: 'Gastos generales',
};

const gaps: Record<Gap, string> = {
  'left-out': 'sin contar: no tiene precio',
  'no-times': 'no se sabe: falta el horario',
};

const sharedBys: Record<SharedBy, string> = {
  footprint: 'según la película que toman sus copias',
  ink: 'según la superficie que imprime',
  time: 'según el tiempo que toma',
  copies: 'según sus copias, dentro de cada pedido',
  cost: 'según lo que cuesta lo demás',
};

const part = (value: number, one: string, many: string, ways: Ways): string =>
  Number.isInteger(value) ? counted(value, one, many, ways) : `${partly(value, ways)} ${many}`;

export const costSheet: Words['costSheet'] = {
  title: (run) => `Lo que cuesta ${run}`,
  each: (count, each, ways) => `por ${copies(count, ways)}, ${each} cada una en promedio`,
  copy: (code, number) => `${code} ${number}`,
  lines: 'De qué se compone',
  parts: { orders: 'Sus pedidos', transfers: 'Sus transfers', copies: 'Sus copias' },
  open: (name) => `Costos de ${name}`,
  path: 'De qué son los costos',
  kinds,
  gaps,
  formula: (terms, result) => `${terms.join(' + ')} = ${result}`,
  counted: (amount) => `Cuenta como ${amount}, para que las partes sumen el total.`,
  shared: (all, share, by, result) =>
    `${all} de la tirada × ${share}, repartido ${sharedBys[by]} = ${result}`,
  count: {
    sheets: (value, ways) => part(value, 'hoja', 'hojas', ways),
    garments: (value, ways) => part(value, 'prenda', 'prendas', ways),
    orders: (value, ways) => part(value, 'pedido', 'pedidos', ways),
    designs: (value, ways) => part(value, 'diseño nuevo', 'diseños nuevos', ways),
  },
  volumes: {
    day: (volume) => `${volume} al día`,
    cleanings: (volume) => `${volume} de limpiezas`,
    start: (volume) => `${volume} al empezar`,
  },
  eachOne: (price) => `${price} cada una`,
  allElse: (amount) => `${amount} de todo lo anterior`,
  filmBy: 'La película se reparte',
  filmBys: { footprint: 'según la película que toman las copias', ink: 'según la tinta que llevan' },
  kept: 'Calculado con los precios y tiempos del día en que se bloqueó.',
  assumed: (names, count, ways) =>
    `Se supone que blanco y color cubren por completo ${counted(count, 'transfer', 'transfers', ways)} sin revisión de arte terminada: ${names.join(', ')}. La tinta y el polvo son a lo sumo estos.`,
  noGarments: (codes) =>
    `No hay prendas anotadas para ${codes.join(', ')}: no se cuenta ninguna. Hay que anotarlas en «Prendas y zonas» del pedido.`,
  unpriced: (codes) => `Algunas prendas de ${codes.join(', ')} no tienen precio y no se cuentan.`,
  noTimes:
    'Esta distribución no tiene horario: faltan la mano de obra, la electricidad y los gastos generales por hora.',
  fixedNote: (amount) => `De eso, ${amount} sería igual con cualquier número de copias.`,
  rates: 'Costos del taller',
  compare: 'Comparar películas',
  makeOrBuy: 'Hacer o comprar',
  nothing: 'Todavía no hay nada en la película, así que no hay nada que calcular.',
  more: (count, ways) => `y ${whole(count, ways)} más`,
};

export const costsForm: Words['costsForm'] = {
  title: 'Costos del taller',
  hint: 'Los valores iniciales son práctica común, sin fuente. Hay que poner los propios, de facturas y etiquetas. Un precio vacío no se cuenta en ningún costo, y la hoja de costos lo dice.',
  groups: {
    ink: 'Tinta y polvo',
    takes: 'Lo que gasta un estampado',
    cleaning: 'Limpieza y arranque',
    power: 'Electricidad',
    hands: 'Mano de obra, por hora',
    garments: 'Prendas',
    beside: 'Estropeados y gastos generales',
  },
  price: (label, currency, unit) => `${label} (${currency} / ${unit})`,
  colourInk: 'Tinta de color',
  whiteInk: 'Tinta blanca',
  powder: 'Polvo',
  colourRate: (unit) => `Tinta de color a plena cobertura (${unit})`,
  whiteRate: (unit) => `Tinta blanca a plena cobertura (${unit})`,
  powderRate: (unit) => `Polvo a plena cobertura (${unit})`,
  day: 'Tinta de mantenimiento al día',
  runsADay: 'Tiradas que comparten un día de mantenimiento',
  cleaning: 'Tinta por limpieza',
  cleanings: 'Limpiezas por tirada',
  startColour: 'Tinta de color que toma una tirada al empezar, además de sus limpiezas',
  startWhite: 'Tinta blanca que toma una tirada al empezar, además de sus limpiezas',
  energy: 'Electricidad',
  watts: { printer: 'Impresora, vatios', oven: 'Horno o línea, vatios', press: 'Plancha, vatios' },
  labour: {
    artwork: 'Pedidos y arte',
    printing: 'Película e impresión',
    cutting: 'Separar',
    pressing: 'Planchar',
    packing: 'Empacar',
  },
  orderTime: 'Tiempo por pedido',
  designTime: 'Tiempo por diseño nuevo',
  blank: 'Cualquier prenda',
  blanks: 'Prendas por modelo',
  blanksHint: 'Modelo y precio, uno por línea: Camiseta 3,90',
  blanksProblem: (line) =>
    `«${line}» no termina en un precio. Hay que escribir un modelo y su precio, como Camiseta 3,90.`,
  spoilage: 'Estropeado, de todo lo que se usa (%)',
  overhead: 'Gastos generales',
  overheads: { hour: 'por cada hora de mano de obra', share: 'como parte de los demás costos' },
  overheadRate: 'Gastos generales, por hora',
  overheadShare: 'Gastos generales (%)',
  wattsProblem: 'Hay que escribir los vatios como número entero, como 1400.',
  wholeProblem: 'Hay que escribir un número entero de 1 a 50.',
  cleaningsProblem: 'Hay que escribir un número entero de 0 a 50.',
  zeroRate: 'Con cero se imprimiría sin tinta. Hay que escribir lo que toma una superficie plena.',
};
