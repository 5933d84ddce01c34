import type { Words } from '../en';
import { counted, inkVolume, roundLength, spoken } from '../format';
import { numbered } from './numbered';

export const upkeep: Words['upkeep'] = {
  numbered,
  checks: {
    'white-stirred': 'Tinta blanca removida o en circulación',
    circulated: 'Antes de una tirada: tinta blanca removida o en circulación',
    'stood-still': 'Tras días parada: cabezal limpio, todos los inyectores de vuelta',
    nozzles: 'Prueba de inyectores impresa y revisada',
    'film-square': 'Película derecha en la alimentación',
    'powder-dry': 'Polvo seco y sin grumos',
    blade: 'Cuchilla afilada, ranura limpia',
    room: 'Temperatura y humedad del taller medidas',
    capping: 'Estación de tapado y limpiador limpios',
    parked: 'Cabezal estacionado y tapado para la noche',
    filters: 'Filtros y ventiladores sin polvo',
    platen: 'Temperatura de la placa medida con sonda',
    'waste-ink': 'Tinta residual vaciada',
    rollers: 'Rodillos de alimentación limpios',
    'deep-clean': 'Alrededores del cabezal limpios',
  },
  line: (list, more) => `Mantenimiento pendiente: ${list}${more > 0 ? `; y ${more} más` : ''}.`,
  lineNever: 'Todavía no hay mantenimiento anotado.',
  pastDate: (list) => `Caducado: ${list}.`,
  open: 'Mantenimiento',
  title: 'Mantenimiento',
  hint: 'La lista inicial es práctica común, sin fuente. Los manuales de impresora, plancha, tinta, película y polvo van por delante: hay que adaptarla a lo que digan.',
  due: 'Pendiente',
  nothingDue: 'No hay nada pendiente.',
  doneFor: 'Hecho por ahora',
  standing: (standing, ways) => {
    switch (standing.kind) {
      case 'done':
        return '';
      case 'never':
        return 'sin anotar todavía';
      case 'days':
        return standing.over === 0
          ? 'toca hoy'
          : `pendiente desde hace ${counted(standing.over, 'día', 'días', ways)}`;
      case 'film':
        return standing.over === 0
          ? 'toca ahora'
          : `pendiente desde hace ${roundLength(standing.over, ways)} de película`;
      case 'before-run':
        return 'toca antes de la próxima tirada';
    }
  },
  intervals: {
    day: 'cada día',
    days: 'cada cierto número de días',
    film: 'cada cierta cantidad de película',
    idle: 'tras días sin imprimir',
    pause: 'antes de una tirada, tras una pausa',
  },
  interval: (interval, ways) => {
    switch (interval.kind) {
      case 'day':
        return 'cada día';
      case 'days':
        return interval.days === 7 ? 'cada semana' : `cada ${counted(interval.days, 'día', 'días', ways)}`;
      case 'film':
        return `cada ${roundLength(interval.length, ways)} de película`;
      case 'idle':
        return `tras ${counted(interval.days, 'día', 'días', ways)} sin imprimir`;
      case 'pause':
        return `antes de una tirada, tras ${counted(interval.hours, 'hora', 'horas', ways)} sin ninguna`;
    }
  },
  lastDone: (when, by) => `${when}, ${by}`,
  done: 'Hecho',
  doneOf: (check) => `Hecho: ${check}`,
  failed: 'Ha fallado',
  failedMinutes: 'Minutos que ha llevado',
  failedColour: 'Tinta de color (ml)',
  failedWhite: 'Tinta blanca (ml)',
  failedNeeded: 'Hay que escribir cuántos minutos ha llevado la limpieza.',
  failedHint:
    'La tinta sale del almacén. La prueba se anota como hecha cuando todos los inyectores imprimen.',
  noteFailed: 'Anotar el fallo',
  notedFailed: (check) => `Anotado como fallo: ${check}. Sigue pendiente hasta que salga bien.`,
  failedTold: ({ seconds, colour, white }, ways) =>
    [
      `ha fallado, ${spoken(seconds, ways)}`,
      ...(colour > 0 ? [`${inkVolume(colour, ways)} de color`] : []),
      ...(white > 0 ? [`${inkVolume(white, ways)} de blanco`] : []),
    ].join(', '),
  takeBack: 'Anular',
  takeBackOf: (check) => `Anular: ${check}`,
  by: 'Iniciales',
  byHint: 'De quien lo hace; quedan para la próxima vez.',
  byNeeded: 'Hay que escribir las iniciales de quien lo hizo.',
  note: 'Nota',
  noteHint: 'Qué se encontró. Va con la próxima revisión que se marque.',
  noted: (check) => `Anotado: ${check}.`,
  tookBack: (check) => `Anulado: ${check}.`,
  hazards: {
    none: 'nada',
    ink: 'tinta y líquido de limpieza',
    heat: 'calor',
    powder: 'polvo en el aire',
    blade: 'una cuchilla',
  },
  cautions: {
    ink: 'Tinta y líquido de limpieza: guantes de nitrilo y protección para los ojos. Antes se leen sus fichas de seguridad.',
    heat: 'Placa caliente: manos lejos, guantes resistentes al calor, una sonda hecha para ello. La plancha se enfría antes de limpiarla.',
    powder: 'Polvo: que no llegue al aire ni a las llamas, con mascarilla N95 o FFP2, bajo extracción.',
    blade: 'Las cuchillas cortan: apagar el cortador antes de meter la mano.',
  },
  deference:
    'Los manuales y fichas de los fabricantes, las normas locales y el personal capacitado van por delante.',
  air: 'El ambiente del taller',
  airHint: (warmth) =>
    `Práctica común: ${warmth} y 40–60 % de humedad relativa. Mandan las fichas de los fabricantes.`,
  temperature: (unit) => `Temperatura (${unit})`,
  humidity: 'Humedad relativa (%)',
  noteAir: 'Anotar el ambiente',
  airNeeded: 'Hay que escribir una temperatura, una humedad o ambas.',
  humidityProblems: {
    unreadable: 'Esto no es una humedad. Hay que escribir un porcentaje, como 52.',
    impossible: 'Ningún taller es tan seco ni tan húmedo. Hay que escribir un porcentaje entre 5 y 100.',
  },
  noRoom: 'Ningún taller está así. Hay que revisar la cifra y su unidad.',
  remarks: {
    cold: 'Más frío de lo habitual: la tinta espesa y el polvo se adhiere mal.',
    warm: 'Más calor de lo habitual: la tinta puede secarse en los inyectores, el polvo puede apelmazarse.',
    dry: 'Más seco de lo habitual: la película se carga y el polvo se pega donde no debe.',
    damp: 'Más húmedo de lo habitual: película y polvo toman humedad, y el curado sale aceitoso.',
  },
  lastReading: (when, air, by) => `Última medida, ${when}: ${air}${by === '' ? '' : `, ${by}`}`,
  noReading: 'Todavía no se ha medido el ambiente.',
  reading: 'Ambiente del taller',
  list: 'Cambiar la lista',
  change: 'Cambiar',
  changeOf: (check) => `Cambiar: ${check}`,
  add: 'Una revisión propia',
  name: 'Qué se revisa',
  nameNeeded: 'Hay que decir qué se revisa.',
  when: 'Cuándo',
  days: 'Días',
  daysProblem: 'Hay que escribir un número entero de días, de 2 a 366.',
  idleDays: 'Días sin imprimir',
  idleProblem: 'Hay que escribir un número entero de días, de 1 a 366.',
  pauseHours: 'Horas sin tirada',
  pauseProblem: 'Hay que escribir un número entero de horas, de 1 a 168.',
  of: 'Se lleva de',
  subjects: {
    shop: 'todo el taller',
    printer: 'cada impresora',
    press: 'cada plancha',
    oven: 'cada horno o línea',
  },
  beforePrint: 'Antes de imprimir',
  pass: 'Seguir sin hacerlo',
  film: (unit) => `Película (${unit})`,
  hazard: 'Qué puede hacer daño',
  giveUp: 'Ya no se hace',
  takeUp: 'Hacerla otra vez',
  reset: 'Como al principio',
  archived: 'ya no se hace',
  history: 'Lo anotado',
  nothingNoted: 'Todavía no hay nada anotado.',
  historyTakenBack: 'anulado',
  older: (count, ways) =>
    `${counted(count, 'nota anterior sin mostrar', 'notas anteriores sin mostrar', ways)}.`,
  dates: 'Usar antes del',
  pastSince: (name, lot, date) => `${name}${lot === '' ? '' : `, lote ${lot}`}: usar antes del ${date}`,
  datesHint:
    'Hay que probar antes en un retazo la película, la tinta o el polvo viejos. Las fichas de los fabricantes dicen cuánto duran.',
};
