import type { ArtworkProblem } from '../../../src/artwork/browser';
import type { Words } from '../en';
import { counted, whole } from '../format';
import { copies, orders as counts, transfers } from './counts';
import { orders as first } from './first-orders';
import { unplaced } from './refusals';

const artworkProblems: Record<ArtworkProblem, string> = {
  'not-image':
    'no es un archivo PNG, JPEG, WebP, SVG ni PDF. Hay que exportar el arte como PNG con fondo transparente y soltar ese archivo.',
  'large-inks':
    'es un JPEG en cuatro tintas de imprenta con más de 40 millones de píxeles. Hay que exportarlo como PNG en sRGB.',
  broken: 'está dañado: le falta una parte o ha cambiado. Hay que exportarlo otra vez.',
  'no-size': 'está dañado: no dice cuánto mide. Hay que exportarlo otra vez.',
  unreadable: 'no se ha podido leer. Hay que comprobar que sigue ahí y probar otra vez.',
  'too-large': 'tiene más de 150 millones de píxeles. Hay que exportarlo a su tamaño impreso con 300 ppp.',
  'too-wide':
    'tiene más de 65.535 píxeles de ancho, que un navegador no muestra. Hay que girarlo, o exportarlo a su tamaño impreso.',
  'many-parts':
    'tiene más partes de las que una imagen necesita. Hay que abrirlo en un programa de imágenes y guardarlo otra vez.',
  'too-long': 'es un SVG de más de 50 MB. Hay que simplificarlo, o exportarlo como PNG a su tamaño impreso.',
  'too-slow':
    'tarda demasiado en dibujarse. Hay que acoplar sus efectos, o exportarlo como PNG a su tamaño impreso.',
  'many-elements':
    'tiene más de 100.000 formas, contadas tantas veces como se repiten. Hay que exportarlo como PNG a su tamaño impreso.',
  'many-filters':
    'tiene más desenfoques, sombras y otros filtros de los que se pueden dibujar. Hay que acoplarlos, o exportarlo como PNG.',
  nested:
    'tiene grupos o repeticiones unos dentro de otros sin fin. Hay que desagruparlos, o exportarlo como PNG.',
  indirect:
    'contiene otro SVG, o partes descritas de forma indirecta. Hay que exportarlo como SVG sencillo o como PNG.',
  locked: 'es un PDF que pide una contraseña. Hay que guardarlo otra vez sin ella, o exportarlo como PNG.',
  'no-page': 'no tiene una página con ese número.',
  'not-whole':
    'no se puede dibujar entero: una parte está dañada o es de un tipo que aquí no se lee. Hay que exportarlo como PNG a su tamaño impreso.',
  layered:
    'no trae una imagen que aquí se lea: solo tiene capas, o tintas de imprenta. Hay que ocultar su fondo y exportarlo como PNG a su tamaño impreso.',
  postscript:
    'es PostScript, que aquí no se ejecuta. Hay que guardarlo como PDF o SVG con el texto en trazados.',
  blank:
    'está en blanco: todos los píxeles son transparentes. Hay que comprobar que se exportó la capa correcta.',
};

export const orders: Words['orders'] = {
  ...first,
  title: 'Pedidos',
  summary: (orderCount, transferCount, copyCount, ways) =>
    `${counts(orderCount, ways)}, ${transfers(transferCount, ways)}, ${copies(copyCount, ways)}`,
  emptyTitle: 'Todavía no hay pedidos',
  empty:
    'Hay que pegar aquí el día copiado de una hoja de cálculo, abrir un archivo CSV o añadir un pedido. Columnas: pedido, transfer, ancho, alto, cantidad, entrega, se puede girar.',
  paste: 'Pegar una tabla',
  open: 'Abrir un archivo',
  addOrder: 'Añadir un pedido',
  newOrder: 'Pedido nuevo',
  search: 'Buscar',
  sort: 'Ordenar por',
  sortings: { due: 'fecha de entrega', name: 'nombre', state: 'estado' },
  show: 'Mostrar',
  showOpen: 'pedidos abiertos',
  showArchived: 'pedidos archivados',
  noneFound: 'Ningún pedido ni transfer contiene lo que se busca.',
  details: 'Detalles',
  duplicate: 'Repetir pedido',
  duplicateNamed: (name) => `Repetir el pedido ${name}`,
  again: (name) => `${name}, repetido`,
  archive: 'Archivar',
  archiveNamed: (name) => `Archivar ${name}`,
  archived: 'archivado',
  partDone: (inPrint, lying, waiting, ways) =>
    `Este pedido no está acabado. Copias impresas o enviadas a imprimir: ${whole(inPrint, ways)}; en la película: ${whole(lying, ways)}; en espera: ${whole(waiting, ways)}.`,
  archiveKeeps:
    'Las copias siguen donde están y se imprimen con su tirada. Al buscar se encuentra el pedido.',
  unarchive: 'Sacar del archivo',
  unarchiveNamed: (name) => `Sacar ${name} del archivo`,
  inPrint: (name) =>
    `${name} tiene copias en impresión, así que se queda. Hay que devolver antes la tirada a borrador, o archivar el pedido.`,
  states: {
    waiting: 'en espera',
    ready: 'listo',
    'in-run': 'en una tirada',
    'part-done': 'hecho en parte',
    printed: 'impreso',
    packed: 'empacado',
    collected: 'entregado',
  },
  contact: 'Contacto',
  notes: 'Notas',
  dueTime: 'Hora de entrega',
  handover: 'Entrega',
  handovers: { collect: 'se recoge', ship: 'se envía' },
  status: 'Situación',
  statuses: { open: 'abierto', packed: 'empacado', collected: 'recogido o enviado' },
  isRush: 'Urgente',
  awaitsProof: 'Espera que se apruebe una prueba',
  awaitsBlanks: 'Espera prendas',
  grid: 'Prendas y zonas',
  names: 'Nombres y números',
  moreOf: (name) => `Más sobre ${name}`,
  overs: 'De más',
  oversHint: 'copias de reserva, hechas a propósito',
  fillers: 'De relleno',
  fillersHint: 'se quieren, pero solo donde no gastan más película',
  shade: 'Color de prenda para verlo',
  noShade: 'ninguno',
  otherShade: 'otro',
  shadeNamed: (shade) => `Color ${shade}`,
  filesTaken: (count, ways) => `${counted(count, 'archivo incorporado', 'archivos incorporados', ways)}.`,
  addTransfer: 'Añadir un transfer',
  newTransfer: 'transfer',
  removeOrder: (code) => `Quitar el pedido ${code}`,
  removeTransfer: (name) => `Quitar ${name}`,
  removedOrder: (name) => `Se ha quitado ${name} con sus transfers. Deshacer lo trae de vuelta.`,
  removedTransfer: (name) => `Se ha quitado ${name}. Deshacer lo trae de vuelta.`,
  code: 'Código',
  codeTaken: (code) =>
    `Otro pedido tiene el código ${code}. Los códigos se imprimen en cada copia, así que cada uno es único.`,
  codeEnd: 'Hay que terminar el código en una letra: en la película le sigue el número de cada copia.',
  codeBegins: (code, other) =>
    `${code} y el código de otro pedido, ${other}, empiezan igual. Hay que elegir uno que no se confunda.`,
  codeLater: 'en película, luego',
  codeLaterOf: (name) => `Código de ${name} cuando ya no esté en película`,
  codeKept: (name, onFilm, code) =>
    `${name} sigue siendo ${onFilm} mientras ese código esté en la película. Cuando se cierren sus tiradas será ${code}.`,
  codeShape: 'Un código tiene de una a cuatro letras o cifras.',
  orderName: 'Pedido',
  due: 'Entrega',
  transfer: 'Transfer',
  width: 'Ancho',
  height: 'Alto',
  count: 'Cant.',
  mayTurn: 'Se puede girar',
  turnings: { fixed: 'No', half: 'Media vuelta', quarter: 'Por cuartos', any: 'Cualquier ángulo' },
  artwork: 'Arte',
  prints: 'Cómo saldrá',
  addArtwork: (name) => `Elegir una imagen para ${name}`,
  dropHere: 'Soltar un PNG aquí',
  readingArtwork: 'Leyendo la imagen…',
  ppi: (ppi) => `${ppi} ppp`,
  trimmed: 'sin su margen vacío',
  countProblem: (least, most) => `El número de copias es un entero de ${least} a ${most}.`,
  countInPrint: (count, ways) =>
    `${counted(count, 'copia está impresa o enviada', 'copias están impresas o enviadas', ways)} a imprimir. Hay que escribir ${whole(count, ways)} o más; las estropeadas se anotan en Planchado.`,
  nameEmpty: 'Hace falta un nombre, para volver a encontrar la copia.',
  keepProportions: 'Poner el alto según el arte',
  tooLarge: (reason) =>
    `Este transfer ${unplaced[reason]}. Hay que hacerlo más pequeño, o elegir otra película.`,
  fileSays: (size) => `El archivo dice ${size}, sin su margen vacío.`,
  useFileSize: 'Usar esa medida',
  otherProportions: 'El arte tiene otras proporciones y saldría estirado.',
  pageTaken: (fileName, page, total, ways) =>
    `${fileName} tiene ${whole(total, ways)} páginas; se ha tomado la ${whole(page, ways)}. Se puede elegir otra en la ventana de lo que se imprimirá.`,
  artworkRefused: (fileName, problem) => `${fileName} ${artworkProblems[problem]}`,
  all: (placed, total, ways) =>
    placed === total
      ? `colocadas: todas (${whole(total, ways)})`
      : `colocadas: ${whole(placed, ways)} de ${whole(total, ways)}`,
  ambiguousDates: 'En fechas como 3/4/2026',
  askOrder: 'como en el país',
  dayFirst: 'primero va el día',
  monthFirst: 'primero va el mes',
};
