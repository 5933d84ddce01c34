import type { Finding } from '../../../src/artwork';
import type { Words } from '../en';
import {
  area,
  counted,
  fineLength,
  hex,
  inkArea,
  number,
  percent,
  shortLength,
  type Ways,
  whole,
} from '../format';

const places = (count: number, ways: Ways) => counted(count, 'lugar', 'lugares', ways);

const lines = (found: { readonly lines: number }, ways: Ways) =>
  `${number(found.lines, ways.locale, 0, 0)} líneas por pulgada`;

/** What a finding is, and what to do about it. */
function finding(found: Finding, ways: Ways): ReturnType<Words['artwork']['said']> {
  switch (found.code) {
    case 'coarse': {
      const [x, y] = [whole(found.x, ways), whole(found.y, ways)];
      return {
        what:
          x === y
            ? `${x} píxeles por pulgada a esta medida`
            : `${x} × ${y} píxeles por pulgada a esta medida`,
        mend: 'Los bordes se verán borrosos o escalonados. Hay que pedir un archivo mayor, o imprimirlo más pequeño. De 250 en adelante está bien, por debajo de 150 está mal.',
      };
    }
    case 'stretched':
      return {
        what: `estirado un ${percent(found.share, ways)} por un lado`,
        mend: `Con este ancho, el arte tiene ${shortLength(found.height, ways)} de alto. Hay que poner ese alto en la lista de pedidos.`,
      };
    case 'ground':
      return {
        what: `un fondo liso de ${hex(found.colour)} llega a los cuatro bordes`,
        mend: 'Se imprimiría como un rectángulo entero. Hay que calarlo aquí, o exportar el arte con fondo transparente.',
      };
    case 'coarse-image':
      return {
        what: `una foto dentro del dibujo tiene ${whole(found.ppi, ways)} píxeles por pulgada a esta medida`,
        mend: 'Se verá borrosa o escalonada, aunque lo demás sea nítido. Hay que pedir la foto más grande, o imprimirlo más pequeño.',
      };
    case 'font':
      return {
        what: `texto en ${counted(found.names.length, 'fuente', 'fuentes', ways)} que aquí no está: ${found.names.join(', ')}`,
        mend: 'Se imprime con otra fuente. Hay que convertir el texto en trazados, o incrustar la fuente, y exportarlo otra vez.',
      };
    case 'checkerboard':
      return {
        what: 'un ajedrezado de grises forma parte de la imagen',
        mend: 'En pantalla representa la transparencia, pero se imprimiría. Hay que pedir el archivo con fondo transparente.',
      };
    case 'fringe':
      return {
        what: `el ${percent(found.share, ways)} de los bordes tiene un cerco ${found.ground === '#ffffff' ? 'claro' : 'oscuro'}`,
        mend: 'Queda del fondo sobre el que estaba el diseño, y se ve en otras prendas. Hay que quitarlo aquí.',
      };
    case 'see-through':
      return {
        what: `el ${percent(found.share, ways)} de la tinta es translúcido`,
        mend: 'El blanco se ve a través como un cerco o una niebla. Hay que hacer opacos los brillos, sombras y bordes suaves, o partirlos en puntos, aquí o en el archivo.',
      };
    case 'thin-strokes':
      return {
        what: `${counted(found.count, 'trazo más fino', 'trazos más finos', ways)} que ${fineLength(found.limit, ways)}, el más fino de ${fineLength(found.least, ways)}`,
        mend: 'Puede que no retengan polvo y se vayan al lavar. Hay que engrosarlos, o imprimirlo más grande.',
      };
    case 'white-lost':
      return {
        what: `no queda blanco bajo trazos o puntos en ${places(found.count, ways)}`,
        mend: `El blanco se contrae ${fineLength(found.choke, ways)} por lado, y ahí el color cae sobre la prenda desnuda. Hay que engrosar los trazos, o contraer menos.`,
      };
    case 'thin-white':
      return {
        what: `blanco de menos de ${fineLength(found.limit, ways)} en ${places(found.count, ways)}, el más fino de ${fineLength(found.least, ways)}`,
        mend: `Es lo que deja la contracción de ${fineLength(found.choke, ways)} por lado, y puede no aguantar. Hay que engrosar los trazos, contraer menos, o imprimirlo más grande.`,
      };
    case 'specks':
      return {
        what: `${counted(found.count, 'mota', 'motas', ways)} de menos de ${fineLength(found.limit, ways)}`,
        mend: 'Puntos tan pequeños no retienen polvo. Hay que quitarlos, o hacerlos más grandes.',
      };
    case 'screen-dots':
      return {
        what: `trama de ${lines(found, ways)}: ${whole(found.count, ways)} de ${counted(found.dots, 'punto', 'puntos', ways)}, menores de ${fineLength(found.limit, ways)}, el menor de ${fineLength(found.least, ways)}`,
        mend: 'Puntos tan pequeños no retienen polvo, y los tonos claros se van al lavar. Hay que usar menos líneas, o empezar con puntos mayores.',
      };
    case 'screen-holes':
      return {
        what: `trama de ${lines(found, ways)}: ${whole(found.count, ways)} de ${counted(found.dots, 'hueco', 'huecos', ways)}, menores de ${fineLength(found.limit, ways)}, el menor de ${fineLength(found.least, ways)}`,
        mend: 'El polvo puede cerrar huecos tan estrechos, y los tonos oscuros salen llenos. Hay que usar menos líneas, o acabar con huecos mayores.',
      };
    case 'strays':
      return {
        what: `${counted(found.count, 'resto suelto', 'restos sueltos', ways)} lejos del diseño: con ${found.count === 1 ? 'él' : 'ellos'} mide ${area(found.size.width, found.size.height, ways)}, y no ${area(found.without.width, found.without.height, ways)}`,
        mend: 'Lo suelto se imprime como suciedad, y el diseño sale más pequeño de lo pedido. Hay que quitarlo.',
      };
    case 'openings':
      return {
        what: `huecos más estrechos que ${fineLength(found.limit, ways)} en ${places(found.count, ways)}, el más estrecho de ${fineLength(found.least, ways)}`,
        mend: 'El polvo puede cerrarlos. Hay que abrirlos, o imprimirlo más grande.',
      };
    case 'black-on-black':
      return {
        what: `el ${percent(found.share, ways)} de la tinta es negro, para una prenda negra`,
        mend: 'Ese negro puede ponerlo la propia prenda: calarlo aquí, y el estampado queda más suave y gasta menos tinta.',
      };
    case 'profile':
      if (found.inks === 'held') {
        return {
          what: `colores en cuatro tintas de imprenta, según el perfil «${found.name}»`,
          mend: 'Se pasan a sRGB con ese perfil. Hay que comparar la vista previa con lo que espera el cliente.',
        };
      }
      if (found.inks === 'assumed') {
        return {
          what: `colores en cuatro tintas de imprenta, sin perfil: se supone ${found.name}`,
          mend: 'Los colores pueden diferir de los que ve el cliente. Hay que pedir el archivo en sRGB, o con su perfil.',
        };
      }
      if (found.clipped !== null && found.grade === 'good') {
        return {
          what: `colores en el perfil «${found.name}», todos dentro de sRGB`,
          mend: 'No hay que hacer nada: se pasan a sRGB tal como son.',
        };
      }
      if (found.clipped !== null) {
        return {
          what: `colores en el perfil «${found.name}»: el ${percent(found.clipped, ways)} de la tinta queda fuera de sRGB`,
          mend: 'Se recorta a sRGB y se imprime más apagado que el dibujo. Hay que elegir colores de sRGB donde importe.',
        };
      }
      return {
        what: `colores en el perfil «${found.name}», no en sRGB`,
        mend: 'Se pasan a sRGB, y lo que queda fuera se apaga. Hay que exportarlo como sRGB para ver lo que saldrá.',
      };
    case 'gamma':
      return {
        what: `guardado con una gamma de ${number(found.gamma, ways.locale, 0, 3)}`,
        mend: 'Se muestra y se imprime corregido; otros programas pueden no hacerlo. Para estar seguros hay que exportarlo como sRGB.',
      };
    case 'animated':
      return {
        what: 'una animación; solo se imprime su primer fotograma',
        mend: 'Hay que exportar el fotograma deseado como imagen fija.',
      };
    case 'deep':
      return {
        what: 'más de 8 bits por canal, impreso como 8',
        mend: 'No hay que hacer nada: en película no se nota.',
      };
    case 'outside':
      return {
        what: `${counted(found.count, 'script o enlace externo', 'scripts o enlaces externos', ways)} en el SVG`,
        mend: 'Nada de eso se ejecuta ni se descarga, así que falta lo que dibujaría. Hay que incrustar las imágenes, convertir el texto en trazados y exportar otra vez.',
      };
  }
}

export const artwork: Words['artwork'] = {
  title: (name) => `${name}: cómo saldrá`,
  nothing: 'Nada que corregir: saldrá tal como está.',
  said: (found, ways) => finding(found, ways),
  findings: 'Lo que se ha encontrado',
  show: 'Mostrar dónde',
  shown: 'Ocultar marcas',
  meant: 'Intencionado',
  notMeant: 'No intencionado',
  named: (act, what) => `${act}: ${what}`,
  picture: (name) => `${name} sobre el color de la prenda`,
  pictureMissing: 'No se ha podido leer la imagen. Hay que dar otra vez su arte a este transfer.',
  loading: 'Leyendo la imagen…',
  checking: (share) => `Revisando cada píxel, ${share}…`,
  stop: 'Parar',
  stopped: 'Este arte no se ha revisado.',
  again: 'Revisarlo',
  page: 'Página del PDF',
  pageOf: (page, total, ways) => `${whole(page, ways)} de ${whole(total, ways)}`,
  layer: 'Mostrar',
  layers: { print: 'lo que se imprime', white: 'el blanco de debajo' },
  whiteHint: (choke) =>
    `El blanco, contraído ${choke} por lado. Donde falta, el color cae sobre la prenda desnuda.`,
  zoom: 'Zoom',
  zooms: {
    '1': 'arte entero',
    '2': 'el doble de grande',
    '4': 'cuatro veces más grande',
    '8': 'ocho veces más grande',
  },
  measures: 'Medidas de una copia',
  printed: 'Medida impresa',
  pixels: 'Píxeles, sin margen vacío',
  ppi: 'Píxeles por pulgada',
  perInch: (x, y, ways) => `${whole(x, ways)} a lo ancho, ${whole(y, ways)} a lo alto`,
  vector: 'dibujado a cualquier tamaño',
  bearing: 'Película con tinta',
  bearingShare: (mm2, share, ways) => `${inkArea(mm2, ways)}, ${percent(share, ways)} de su caja`,
  white: 'Blanco',
  colour: 'Color',
  outline: 'Contorno, todos los bordes',
  limits: 'Límites de este taller',
  limitsHint:
    'Trazos y huecos: práctica común, sin fuente. Hay que ajustarlos a lo que aguantan la película y el polvo propios. La contracción es lo que el programa de la impresora quita al blanco. También la lleva el plano de blanco que se guarda aquí.',
  stroke: 'Trazo más fino',
  opening: 'Hueco más estrecho',
  choke: 'Contracción del blanco por lado',
  thinnestWhite: 'Blanco más fino',
  tooWide: (most) => `Eso es más de ${most}, más que cualquier límite de este tipo.`,
};
