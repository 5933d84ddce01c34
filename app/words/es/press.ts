import type { PressValues } from '../../../src/model';
import type { JobKind, Worker } from '../../../src/pressing';
import type { Words } from '../en';
import { counted, type Ways, whole } from '../format';
import { figure, say, stopAfter } from '../format/sentence';
import { when } from './when';

const workers: Record<Worker, string> = {
  printer: 'Impresora',
  hands: 'Operador',
  press: 'Plancha',
  oven: 'Horno',
};

const kinds: Record<JobKind, string> = {
  ready: 'Calentar, probar inyectores',
  print: 'Imprimir',
  'cut-off': 'Cortar del rollo',
  powder: 'Empolvar',
  cure: 'Curar',
  line: 'Pasar por la línea',
  apart: 'Separar copias',
  press: 'Planchar',
  again: 'Pelar, planchar otra vez',
  pack: 'Revisar y empacar',
};

/** What the bars of the day's chart mean. */
const legend = {
  ready: 'calentar, probar inyectores',
  print: 'imprimir',
  cure: 'empolvar y curar',
  apart: 'separar copias',
  press: 'planchar, en el color del pedido',
  pack: 'revisar y empacar',
};

const spans = (list: readonly number[], ways: Ways): string =>
  `${list.length > 1 ? 'tramos' : 'tramo'} ${list.map((span) => whole(span + 1, ways)).join(' + ')}`;

const pressures: Record<PressValues['pressure'], string> = {
  light: 'ligera',
  medium: 'media',
  firm: 'firme',
};

const peeled = { hot: 'en caliente', warm: 'en tibio', cold: 'en frío' };

export const press: Words['press'] = {
  title: 'Planchado',
  run: 'Tirada',
  states: {
    draft: 'borrador',
    locked: 'bloqueada para imprimir',
    printed: 'impresa',
    cured: 'curada',
    pressed: 'planchada',
    closed: 'cerrada',
  },
  stateAt: (state, when) => `${state} ${when}`,
  history: 'Hasta ahora',
  peel: 'Se pela',
  peels: { hot: 'en caliente, al momento', warm: 'en tibio', cold: 'en frío' },
  fabric: 'Tejido',
  fabrics: {
    cotton: 'algodón',
    blend: 'mezcla de algodón y poliéster',
    polyester: 'poliéster',
    nylon: 'nailon',
    rayon: 'rayón, viscosa',
    canvas: 'lona',
    leather: 'cuero tratado',
    acrylic: 'acrílico',
    elastane: 'elástico, con elastano',
    'non-woven': 'polipropileno no tejido',
    shell: 'tejido recubierto',
    other: 'otra cosa',
  },
  untold: 'sin indicar',
  severalFabrics: 'varios',
  fabricOfLines: 'Tejido de todas las líneas',
  untoldCaution:
    'Nadie ha indicado el tejido: hay que preguntarlo antes de planchar. Hasta entonces se planifica con poco calor.',
  wants: 'El cliente recibe',
  wantsOf: { garments: 'prendas planchadas', transfers: 'solo transfers' },
  workers,
  kinds,
  job: (job, ways) => {
    switch (job.kind) {
      case 'ready':
        return kinds.ready;
      case 'press':
      case 'again':
        return `${kinds[job.kind]} ${job.code ?? ''} ${job.transfers.join(' + ')}, ${counted(job.copies, 'copia', 'copias', ways)}, ${spans(job.spans, ways)}`;
      case 'pack':
        return `${kinds.pack} ${job.code ?? ''}, ${counted(job.copies, 'copia', 'copias', ways)}`;
      default:
        return `${kinds[job.kind]} ${spans(job.spans, ways)}`;
    }
  },
  sentence: (end, runs, ways) => [
    say('Lista '),
    figure(when(end)),
    runs > 1
      ? say(`, con ${counted(runs, 'tirada abierta', 'tiradas abiertas', ways)}.`)
      : stopAfter(when(end)),
  ],
  notPlanned: (run) => `${run} no está en este plan. Al elegirla aquí se ve por qué.`,
  inRuns: 'tiradas',
  runOrder: 'Qué tirada va primero',
  orderFound: 'Así menos se retrasa, lo urgente sigue y todo acaba antes.',
  orderByHand: 'Cambiado a mano.',
  orderAgain: 'Volver a buscarlo',
  allPrinted: 'toda impresa',
  printsAt: (time) => `se imprime desde ${time}`,
  doneAt: (time) => `lista ${time}`,
  sooner: 'Antes',
  moveRun: (run) => `Mover ${run}`,
  soonerOf: (run) => `Imprimir antes ${run}`,
  doNow: 'Ahora toca',
  done: 'Hecho',
  startOf: (run) => `Empezar ${run}`,
  restFromTo: (from, to) => `Descanso de ${from} a ${to}`,
  dueAt: (time) => `Se entrega a las ${time}`,
  working: 'Calculando el día…',
  missing: {
    'nothing-laid':
      'Todavía no hay nada en la película de esta tirada. Primero se distribuye, después se puede calcular su día.',
    'not-cut':
      'Ningún corte recto separa esta distribución en tramos lo bastante cortos. Hay que distribuir primero otra vez.',
    'no-press':
      'No hay plancha con la que planchar ni bajo la que curar. Hay que decir en «Máquinas» cuántas planchas hay.',
    'no-speed':
      'La velocidad de la impresora es cero. Hay que decir en «Máquinas» cuánta película imprime en una hora.',
  },
  bound: (least, over) => `Fin más temprano posible: ${when(least)}; este llega ${over} después.`,
  proven: 'No se puede acabar antes.',
  bottleneck: (of, busy, machine) => {
    switch (of.kind) {
      case 'worker':
        return `Lo que marca el ritmo: ${machine ?? workers[of.worker].toLowerCase()}, ${busy} de trabajo.`;
      case 'trays':
        return 'Lo que marca el ritmo: faltan bandejas para película empolvada.';
      case 'path':
        return `Lo que marca el ritmo: una cosa detrás de otra, desde «${kinds[of.through[0] ?? 'ready'].toLowerCase()}» hasta «${kinds[of.through.at(-1) ?? 'pack'].toLowerCase()}».`;
    }
  },
  tooWet: (time) =>
    `La impresión húmeda espera ${time} de más en total. Tramos más cortos, más operadores o una espera mayor en «Máquinas» lo arreglan.`,
  wetOverClosing: (powdered) =>
    `Queda película húmeda con el taller cerrado: se empolva ${when(powdered)} y no antes. Hay que empolvarla antes de cerrar, o imprimirla después.`,
  tooLongPowdered: (time) =>
    `La película empolvada espera el curado ${time} de más en total. Otro horno u otra plancha, o tramos más cortos, lo arreglan.`,
  liesWet: (run, time, limit) =>
    `${run} se envía sin pausa: su primera tinta queda húmeda ${time}, no ${limit} como mucho. Mejor tramo a tramo, o una tirada más corta.`,
  askSends:
    'Hay que decir en «Máquinas» cómo llegan las tiradas a la impresora: un trabajo, o uno por tramo.',
  changes: (count, ways) =>
    count === 0
      ? 'Una sola temperatura de plancha en todo el día.'
      : `${counted(count, 'cambio', 'cambios', ways)} de temperatura de plancha.`,
  orders: 'Pedidos',
  orderDone: 'listo',
  due: 'entrega',
  noDue: 'sin fecha',
  beyond: ({ waiting, elsewhere }, ways) =>
    `sin ${[
      ...(waiting > 0 ? [`${counted(waiting, 'copia que espera', 'copias que esperan', ways)}`] : []),
      ...(elsewhere > 0 ? [`${counted(elsewhere, 'copia', 'copias', ways)} en otras tiradas`] : []),
    ].join(' y ')}`,
  inTime: 'a tiempo',
  start: 'Empezar la tirada',
  startNote:
    'El reloj de esta tirada ya corre. Hay que marcar lo que está hecho, y el resto se planifica de nuevo.',
  next: 'Lo que viene ahora',
  nextHint: 'Hay que marcar lo que está hecho. Los pasos anteriores se marcan también.',
  doneJobs: (count, of, ways) => `hecho: ${whole(count, ways)} de ${whole(of, ways)}`,
  doneOn: (job) => `Hecho en, para ${job}`,
  undoTick: (job) => `Desmarcar: ${job}`,
  undoShort: 'Desmarcar',
  lastDone: 'Último hecho',
  jobs: (count, ways) => counted(count, 'tarea', 'tareas', ways),
  together: 'Varias a la vez',
  batch: (batch, ways) => {
    const all = `las ${whole(batch.jobs.length, ways)}`;
    switch (batch.by) {
      case 'kind':
        return `${kinds[batch.kind]}: ${all}`;
      case 'span':
        return `Tramo ${whole(batch.span + 1, ways)} hasta separarlo: ${all}`;
      case 'order':
        return `${batch.order.code} hasta empacarlo: ${all}`;
    }
  },
  togetherDone: 'Todas estas están hechas',
  back: (state) => `Volver a ${state}`,
  lockFirst:
    'Esta tirada es un borrador. Hay que bloquearla para imprimir en la sala Película y empezarla después aquí.',
  closed: 'Esta tirada está cerrada. Lo que gastó queda en el registro.',
  equipment: 'Máquinas',
  recipes: 'Recetas',
  cards: 'Fichas para imprimir',
  handOver: 'Traspasar',
  spoil: 'Una copia se ha estropeado',
  chart: 'El día',
  zoom: 'Zoom',
  zooms: { fit: 'el día entero', double: 'más grande', four: 'al máximo' },
  nowAt: (time) => `ahora, ${time}`,
  chartLabel: 'Cronograma del día: lo que se hace con la película de todas las tiradas y cada pedido',
  filmSteps: { ready: 'Calentar', print: 'Imprimir', cure: 'Empolvar y curar', apart: 'Separar' },
  shortSteps: { ready: 'Calentar', print: 'Imprimir', cure: 'Curar', apart: 'Separar' },
  legend,
  legendDone: 'ya hecho',
  lot: (what, count, ways) => `${what}, ${counted(count, 'paso', 'pasos', ways)}`,
  from: 'De',
  by: 'Quién',
  initials: 'Sus iniciales',
  initialsHint: 'Van con cada marca; este dispositivo las recuerda.',
  nozzlesFailed: 'La prueba de inyectores ha fallado',
  to: 'A',
  what: 'Qué',
  asTable: 'El día en una tabla',
  loads: 'A la vez',
  recipe: 'Receta',
  pressing: 'Cómo planchar',
  line: (values, temperature, ways) =>
    [
      temperature,
      `${values.seconds.small === values.seconds.large ? whole(values.seconds.small, ways) : `${whole(values.seconds.small, ways)}–${whole(values.seconds.large, ways)}`} s`,
      `presión ${pressures[values.pressure]}`,
    ].join(', '),
  prePress: (seconds, ways) => `planchado previo ${whole(seconds, ways)} s`,
  peelAfter: (peel, wait, ways) =>
    wait === 0
      ? `pelar ${peeled[peel]}`
      : `pelar ${peeled[peel]}, ${peel === 'cold' ? 'fría al tacto, ' : ''}a los ${whole(wait, ways)} s`,
  secondPress: (seconds, ways) => `después ${whole(seconds, ways)} s más`,
  cover: (cover) =>
    ({
      none: 'sin hoja protectora',
      paper: 'bajo papel de hornear',
      silicone: 'bajo una hoja de silicona',
      fabric: 'bajo un paño de algodón',
    })[cover],
  covers: {
    none: 'ninguna',
    paper: 'papel de hornear',
    silicone: 'hoja de silicona',
    fabric: 'paño de algodón',
  },
  pressures,
  origins: {
    'common-practice': 'práctica común: consultar la ficha técnica del fabricante de la película',
    'data-sheet': 'de la ficha técnica',
    own: 'propios del taller',
  },
  curers: {
    press: 'bajo la plancha suspendida',
    oven: 'en un horno',
    line: 'en una línea con sacudidor',
  },
  curing: 'Cómo curar',
  cureLine: (temperature, time, clear) =>
    clear === null ? `${temperature}, ${time}` : `${temperature}, ${time}, placa suspendida a ${clear}`,
  cureLooks: [
    'Bien: brillante, con textura de piel de naranja.',
    'Poco: granulado y mate, el polvo se desprende al frotar. Hay que seguir curando.',
    'Demasiado: amarillento y quebradizo. Hay que reimprimirlo.',
    'Una superficie aceitosa indica humedad: hay que secar la película, el polvo y la sala.',
  ],
  fabricCautions: {
    'try-on-scrap': 'Hay que probarlo antes en un retazo de este tejido.',
    'dye-migrates':
      'El tinte puede subir al estampado: poco calor, poco tiempo, y hay que mirarlo al día siguiente.',
    coated: 'Un recubrimiento puede impedir que agarre: hay que pedir una ficha técnica.',
    shrinks: 'Puede encoger o quedar con brillo: hay que planchar poco tiempo, con hoja protectora.',
    melts: 'Se ablanda con poco calor: planchar con poco calor y poco tiempo, con hoja protectora.',
    moisture: 'Retiene humedad: hay que hacerle un buen planchado previo.',
  },
  cautions: {
    print:
      'Tinta y líquido de limpieza: guantes de nitrilo y protección para los ojos. Antes se leen sus fichas de seguridad.',
    'cut-off':
      'Cuchilla en la ranura, película plana, sin tijeras cerca del cabezal: la película levantada puede tocarlo.',
    apart: 'Las cuchillas cortan: alejarlas de la mano que sujeta la película.',
    powder: 'El polvo vuela: mascarilla N95 o FFP2. Se sacude lejos de personas y llamas, bajo extracción.',
    'cure-press':
      'Placa caliente sobre la película: nada puede tocarla. Guantes resistentes al calor; los finos se funden. Extracción junto a la plancha: una ventana abierta deja entrar humedad.',
    'cure-oven':
      'Cámara y bandejas calientes: guantes resistentes al calor; los finos se funden. Extracción junto al horno: una ventana abierta deja entrar humedad.',
    line: 'Partes móviles y calientes: manos, pelo y mangas fuera mientras funciona. El polvo se carga con mascarilla N95 o FFP2. La extracción se lleva polvo y humos.',
    press:
      'Placa y película calientes: manos lejos, guantes resistentes al calor; los finos se funden. Extracción junto a la plancha. La prenda se enfría antes de doblarla.',
    again:
      'Segundo planchado: la placa sigue igual de caliente y la impresión queda al aire. Hoja protectora puesta, manos lejos, guantes resistentes al calor.',
  },
  acts: {
    print: 'Imprimir',
    'cut-off': 'Cortar',
    apart: 'Separar',
    powder: 'Empolvar',
    'cure-press': 'Curar',
    'cure-oven': 'Curar',
    line: 'Línea con sacudidor',
    press: 'Planchar',
    again: 'Segundo planchado',
  },
  dustLimits: 'Límites de polvo',
  dust: 'Polvo molesto en 8 horas: 15 mg/m³ en total, 5 mg/m³ respirable (EE. UU., 29 CFR 1910.1000, tabla Z-1). Cada país puede tener otros.',
  deference:
    'Antes que esta hoja van las fichas técnicas, las normas locales y el personal autorizado o capacitado del taller.',
  whatIf: 'Qué ayudaría',
  whatIfHint: 'Cada cosa se prueba por sí sola, con todo lo demás como está.',
  tryThem: 'Calcularlo',
  gains: (time) => `${time} antes`,
  noGain: 'nada antes',
  notPossible: 'imposible con esta distribución',
  whatIfs: {
    oven: 'un horno aparte para curar',
    press: 'una plancha más',
    hands: 'un operador más',
    printer: 'una impresora más, con las tiradas repartidas',
    earlier: 'abrir una hora antes',
    spans: 'tramos más cortos, de dos tercios de largo',
  },
  shelf: 'En el estante',
  shelfFirst: 'Usar primero lo que hay aquí, al añadir o distribuir copias',
  shelfItem: (code, name, size) => `${code} ${name}, ${size}`,
  shelfCured: (day) => `curada ${day}`,
  draw: (count, ways) => `Usar ${whole(count, ways)} para pedidos en espera`,
  drawn: (count, ways) =>
    `${counted(count, 'copia ya no gasta', 'copias ya no gastan', ways)} película: salen del estante.`,
};
