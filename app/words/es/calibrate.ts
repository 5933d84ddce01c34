import type { Words } from '../en';
import { counted, type Ways } from '../format';

const runs = (count: number, ways: Ways) => counted(count, 'tirada', 'tiradas', ways);

const drivers: Words['calibrate']['drivers'] = {
  area: 'una superficie impresa del todo',
  run: 'cada tirada, imprima lo que imprima',
  length: 'una hora de impresión',
  span: 'un tramo',
  copy: 'una copia',
  pressed: 'un planchado sobre prenda',
  plan: 'todo el tiempo previsto',
};

export const calibrate: Words['calibrate'] = {
  title: 'Consumos según el registro',
  open: 'Calibrar',
  hint: 'Lo que dicen las tiradas cerradas. Nada cambia hasta que se aplica, y cada cambio se puede anular.',
  offer: (list) => `Las tiradas cerradas dicen bastante de: ${list}.`,
  noOffer: (needed, ways) =>
    `Cuando haya ${counted(needed, 'tirada cerrada', 'tiradas cerradas', ways)} con tinta, polvo o minutos medidos, de ellas se pueden sacar los consumos propios.`,
  what: 'Qué se mira',
  quantities: {
    colour: 'tinta de color',
    white: 'tinta blanca',
    powder: 'polvo',
    printer: 'tiempo de impresora',
    hands: 'mano de obra',
  },
  drivers,
  range: (low, high) => `${low} – ${high}`,
  columns: {
    rate: 'Por',
    present: 'Ahora',
    found: 'Calculado',
    range: 'Intervalo del 95 %',
    apply: 'Aplicar',
  },
  belowCleanings:
    'Menos de lo que se cuenta para las limpiezas de una tirada. Hay que bajarlas primero en «Costos del taller».',
  fits: 'Lo que hay puesto está dentro del intervalo: estas tiradas no lo contradicen.',
  loose: (more, ways) =>
    more > 200
      ? 'El intervalo es más ancho que la mitad del valor. Más tiradas que varíen como estas no lo arreglarían.'
      : `El intervalo es más ancho que la mitad del valor. Con unas ${counted(more, 'tirada más', 'tiradas más', ways)} como estas sería bastante estrecho.`,
  nothing: 'Estas tiradas no dicen nada de ello.',
  tooFar:
    'Los tiempos de manejo no pueden absorber una diferencia tan grande. Hay que mirar las recetas y lo anotado.',
  apply: 'Aplicar',
  applyOf: (driver) => `Aplicar: ${driver}`,
  missing: (count, ways) =>
    `Con ${counted(count, 'tirada cerrada y medida más', 'tiradas cerradas y medidas más', ways)} habrá algo que decir. Con menos de cinco tiradas más que valores buscados, un intervalo dice sobre todo que nadie sabe cuánto varían.`,
  nothingTold: 'Estas tiradas no dicen nada: no se imprimió nada en ellas.',
  untold: {
    'not-measured': (count, ways) => `${runs(count, ways)} sin medir`,
    'as-planned': (count, ways) => `${runs(count, ways)} con la misma cifra prevista, que no dice nada nuevo`,
    'no-artwork': (count, ways) => `${runs(count, ways)} con arte sin revisar`,
    'other-times': (count, ways) => `${runs(count, ways)} con otros tiempos de manejo en el plan`,
    'nothing-printed': (count, ways) => `${runs(count, ways)} sin nada impreso`,
  },
  notTold: (list) => `Sin mirar: ${list}.`,
  apart: (list, reason) =>
    reason === 'few'
      ? `Aún son pocas tiradas para distinguir del resto: ${list}.`
      : `En estas tiradas no se distingue del resto, porque suben y bajan a la vez: ${list}.`,
  plot: 'Cómo encaja cada tirada',
  plotTold: (unit) => `según los valores calculados, ${unit}`,
  plotOff: (unit) => `diferencia, ${unit}`,
  scatter: (amount) =>
    `Cada punto es una tirada. A lo ancho, lo que dicen de ella los valores calculados; a lo alto, cuánto se aparta lo medido. Las tiradas varían en ${amount} (desviación típica).`,
  allFit: 'Ninguna tirada destaca.',
  misfits: (list) =>
    `No se parece a las demás: ${list}. Hay que mirar lo que se anotó, y dejar fuera una tirada si su cifra se leyó mal.`,
  leftOutNote: (list) => `Fuera: ${list}.`,
  runs: 'Las tiradas',
  runColumns: {
    run: 'Tirada',
    day: 'Cerrada',
    measured: 'Medido',
    told: 'Según los valores',
    off: 'Diferencia',
    influence: 'Influencia',
    takenIn: 'Cuenta',
  },
  influenceHint:
    'Influencia: cuánto cambia el resultado por una sola tirada. Una que influye mucho merece una mirada, aunque encaje.',
  takeIn: (run) => `Contar ${run}`,
  changes: 'Cambios hasta ahora',
  noChanges: 'Todavía no se ha cambiado ningún valor según el registro.',
  change: (what, from, to) => `${what}: ${from} → ${to}`,
  changedAt: (when, count, ways) => `${when}, de ${runs(count, ways)}`,
  takenBack: (when) => `anulado ${when}`,
  setSince: 'puesto de otro modo desde entonces',
  takeBack: 'Anular',
  takeBackOf: (change) => `Anular: ${change}`,
  settings: {
    'rates.colour': 'tinta de color',
    'rates.white': 'tinta blanca',
    'rates.powder': 'polvo',
    'start.colour': 'tinta de color que una tirada toma al empezar',
    'start.white': 'tinta blanca que una tirada toma al empezar',
    'printer.perHour': 'impreso en una hora',
    'printer.warmUp': 'calentamiento de la impresora',
    'handling.cutOff': 'cortar un tramo del rollo',
    'handling.powder': 'empolvar un tramo',
    'handling.load': 'cargar o descargar un curado',
    'handling.cutApart': 'separar una copia',
    'handling.dress': 'prenda dentro y fuera de la plancha',
    'handling.place': 'colocar un transfer, pelarlo',
    'handling.pack': 'estirar, revisar, embolsar una prenda',
  },
};
