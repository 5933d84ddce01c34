import type { Words } from '../en';
import { counted, whole } from '../format';
import { figure, opening, say, stopAfter } from '../format/sentence';
import { copies } from './counts';
import { refusal, unplaced } from './refusals';
import { when } from './when';

export const film: Words['film'] = {
  title: 'Película',
  firstRun: 'Tirada 1',
  sentence: (length, waste, cost, doneBy) => [
    figure(length),
    say(' de película, '),
    figure(waste),
    say(' de merma, '),
    opening(cost),
    ...(doneBy === null
      ? [say(' de película.')]
      : [say(' de película, lista '), figure(when(doneBy)), stopAfter(doneBy.time)]),
  ],
  nothingLaid: 'Todavía no hay nada en la película.',
  detailsOfSheets: (left, fewest, unavoidable) =>
    `${left} · mínimo posible ${fewest} · ${unavoidable} que ninguna distribución evita`,
  details: (left, shortest, unavoidable) =>
    `${left} · mínimo posible ${shortest} · ${unavoidable} que ninguna distribución evita`,
  detailsByOutlines: (left, least) => `${left} · ninguna distribución ocupa menos de ${least}`,
  sheets: (count, ways) => counted(count, 'hoja', 'hojas', ways),
  leftOfSheets: (count, ways) => counted(count, 'hoja disponible', 'hojas disponibles', ways),
  straightCuts: (count, ways) =>
    `${counted(count, 'corte recto separa', 'cortes rectos separan', ways)} todas las copias`,
  boxesTogether:
    'Los pedidos van juntos, aparte o por fecha: esas distribuciones van por cajas. Los ajustes de la película lo dicen.',
  layByOutlines: (count, ways) =>
    `${counted(count, 'copia conserva', 'copias conservan', ways)} su caja: no se conoce el contorno del diseño.`,
  broken: {
    'not-straight':
      'Con cortes rectos solos ya no se separan estas copias. Hay que distribuir otra vez, o cortar esta película con tijeras.',
    'not-staged':
      'Cortando a lo ancho, a lo largo y otra vez a lo ancho ya no se separan estas copias. Hay que distribuir otra vez, o permitir cualquier orden.',
    'not-apart':
      'Los pedidos ya no quedan separados: algunos comparten un trecho de película. Hay que distribuirlos otra vez para separarlos.',
    'not-by-due':
      'Algunas copias quedan detrás de otras con entrega posterior. Distribuir otra vez pone primero lo más próximo.',
  },
  cleanOffcut: (size) => `${size} de la última hoja quedan limpios`,
  sheetFlag: (number) => `hoja ${number}`,
  selected: (count, ways) => counted(count, 'copia seleccionada', 'copias seleccionadas', ways),
  chosen: (name, size, across, along) => `${name}, ${size}, a ${across} del borde, a ${along} del principio`,
  fixed: 'en impresión: se queda donde está',
  moveTo: 'Pasar a',
  leftOnRoll: (left) => `después quedan ${left} en el rollo`,
  gapsAreWaste: 'Separaciones y márgenes cuentan como merma.',
  atMost: (share) => `como mucho un ${share} más larga que la mínima posible`,
  covered: (share) =>
    `las copias cubren el ${share} de la película; no se conoce la distribución por contornos más corta`,
  atMostSheets: (more, ways) =>
    `como mucho ${counted(more, 'hoja', 'hojas', ways)} más que el mínimo posible`,
  offer: (less, cost) => `Hay lista una distribución que gasta ${less} menos: ahorra ${cost}.`,
  takeOffer: 'Usarla',
  declineOffer: 'Ahora no',
  ordersNear: (share) => `las copias de un pedido quedan dentro de un ${share} de la película, de media`,
  proven: 'demostrado: ninguna distribución es más corta',
  provenSheets: 'demostrado: no bastan menos hojas',
  stillLooking: 'sigue buscando',
  looking: 'Buscando una distribución más corta',
  stays: 'No se ha encontrado ninguna distribución que gaste menos película, así que se queda la que había.',
  staysInOrder:
    'No se ha encontrado ninguna distribución que gaste menos película. Lo más próximo pasa delante.',
  nothingToLay: ({ elsewhere, unchosen, unready }, ways) => {
    const reasons = [
      ...(elsewhere > 0 ? [`${whole(elsewhere, ways)} elegidas para otras tiradas`] : []),
      ...(unchosen > 0 ? [`${whole(unchosen, ways)} sin elegir para esta`] : []),
      ...(unready > 0 ? [`${whole(unready, ways)} a falta de prueba o prendas`] : []),
    ];
    return reasons.length === 0
      ? 'No hay nada que distribuir: todas las copias están ya en la película, fijadas o colocadas.'
      : `No hay nada que distribuir en esta tirada. Copias en espera: ${reasons.join(', ')}.`;
  },
  chosenElsewhere: (name) =>
    `Las copias de ${name} en espera están elegidas para otra tirada. Se devuelven allí, en «Elegir copias».`,
  planRefused:
    'Una distribución no pasó su comprobación y no se ha usado. Lo que había en la película sigue ahí.',
  uncuttable: (most) =>
    `Ningún corte recto separa esta distribución en tramos de ${most} o menos. Hay que distribuir otra vez, o permitir tramos más largos.`,
  leftOut: (name, count, reason, ways) =>
    `${name}: ${counted(count, 'copia queda fuera', 'copias quedan fuera', ways)}, porque ${unplaced[reason]}.`,
  refused: (problem, name, count, ways) =>
    count === 1
      ? `${name} se queda donde estaba: ${refusal(problem, ways)}.`
      : `${copies(count, ways)} se quedan donde estaban: ${refusal(problem, ways)}.`,
  refusedShort: refusal,
  knifeFlag: (number, distance) => `corte ${number}, ${distance}`,
  filmLabel: (count, ways) => `Película con ${copies(count, ways)}`,
  filmKeys: (step) =>
    `N selecciona la copia siguiente, las flechas la mueven ${step}, R la gira, P la fija, Supr la quita. El punto y la coma la giran 15°. El signo de interrogación muestra todas las teclas. Las mismas copias están en la tabla de abajo.`,
  ordersOnFilm: 'Pedidos para esta película',
  soonestFirst: 'primero los urgentes, luego los que antes se entregan',
  keysHint: '? muestra todas las teclas',
  wait: (count, ways) => `${whole(count, ways)} sin colocar`,
  putBack: 'Poner una en la película',
  putBackNamed: (name) => `Poner una copia de ${name} en la película`,
  noRoom: 'No le queda sitio en esta película. Hay que quitar algo, o elegir un rollo más largo.',
  printFirst: 'Imprimir primero',
  printFirstNamed: (name) => `Imprimir ${name} primero`,
  broughtFirst: (name, placed, ways) =>
    `${name} es ahora un pedido urgente: ${copies(placed, ways)} tan cerca del principio como se puede.`,
  noRoomForRush: (name, waiting, ways) =>
    `No queda sitio en esta película para ${copies(waiting, ways)} de ${name}. Esperan a esta tirada.`,
  moreOrders: 'más',
  rushPriced: (name) => `El precio de ${name} lleva ahora el recargo por urgencia.`,
  duesWorking: 'Calculando cuándo está listo cada pedido…',
  lateBy: (time) => `${time} de retraso`,
  late: (orders) => `Con retraso: ${orders}.`,
  rushDone: (order, at) => `${order} (urgente) listo ${when(at)}`,
  allInTime: 'Ningún pedido de esta película llega tarde.',
  inTimeBut: (orders, ways) =>
    `Lo que está en esta película llega a tiempo; ${counted(orders, 'pedido tiene', 'pedidos tienen', ways)} copias fuera de ella.`,
  allPlaced: (count, ways) => `${whole(count, ways)}, todo colocado`,
  table: 'Las copias en una tabla',
  tableHint:
    'Todo lo que se hace en la película funciona también aquí. Las posiciones se miden desde el borde cercano y desde el inicio.',
  copy: 'Copia',
  size: 'Medida',
  across: 'Desde el borde',
  along: 'A lo largo',
  turned: 'Giro',
  angleProblems: {
    empty: 'Hay que escribir los grados, como 30.',
    unreadable: 'Esto no son grados. Hay que escribir un número, como 30 o 22,5.',
  },
  pinned: 'Fijada',
  overview: 'La tirada entera; el marco es lo que se ve',
  settings: 'Película y precio',
  filmLine: (width, gap, span) =>
    span === null
      ? `${width} de ancho, separación ${gap}, sin cortar`
      : `${width} de ancho, separación ${gap}, tramos de hasta ${span}`,
  emptyTitle: 'La película está vacía',
  empty: 'Primero se pegan los pedidos, después se distribuyen aquí.',
  toOrders: 'Ir a los pedidos',
  zoom: 'Zoom',
  several: 'Seleccionar varias',
  outlines: 'Contornos',
  firstFilm: { mm: 'Rollo de 330 mm', in: 'Rollo de 13 in' },
  tooWideFilm: (width, takes, machine) =>
    `Esta película mide ${width} de ancho, y ${machine === '' ? 'donde se cura' : `en «${machine}»`} caben ${takes} como mucho. Hay que curarla por partes, o elegir otra más estrecha.`,
  tooLargeSpan: (span, length, ways) =>
    `El tramo ${whole(span + 1, ways)} (${length}) es mayor que aquello en lo que se cura. Hay que permitir tramos más cortos, o curarlo por partes.`,
  capOnFlat: (code, name) =>
    `${code} ${name} va en gorras, que ninguna placa plana acepta. Hay que decir en «Máquinas» si hay una placa para gorras.`,
  tooLargeTransfer: (code, name) =>
    `${code} ${name} es mayor que la plancha. Hay que plancharlo en dos veces, o hacerlo más pequeño.`,
  costOpens: (cost) => `${cost}: lo que cuesta la tirada`,
  fromShelf: (drawn, ways) =>
    `Del estante, ya curadas: ${drawn.map(({ name, count }) => `${counted(count, 'copia', 'copias', ways)} de ${name}`).join(', ')}. No necesitan película; deshacer las devuelve.`,
};
