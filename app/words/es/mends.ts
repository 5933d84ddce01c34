import type { Mend } from '../../../src/model';
import type { Words } from '../en';
import { fineLength, inkArea, number, type Ways, wholePercent } from '../format';

const lines = (screen: { readonly lines: number }, ways: Ways) =>
  `${number(screen.lines, ways.locale, 0, 0)} líneas por pulgada`;

function title(mend: Mend, ways: Ways): string {
  switch (mend.kind) {
    case 'knock-out':
      return `Calado de ${mend.colour}`;
    case 'take-off':
      return `Quitar lo menor de ${fineLength(mend.largest, ways)}`;
    case 'thicken':
      return `Engrosar los trazos a ${fineLength(mend.to, ways)}`;
    case 'defringe':
      return mend.ground === '#ffffff' ? 'Quitar el cerco claro' : 'Quitar el cerco oscuro';
    case 'threshold':
      return 'Hacer opaco lo translúcido';
    case 'screen':
      return 'Partir en puntos lo translúcido';
  }
}

function hint({ kind }: Mend): string {
  switch (kind) {
    case 'knock-out':
      return 'Lo que toma el color de la prenda no se imprimirá. La imagen original se conserva.';
    case 'take-off':
      return 'Lo que ya no se ve no se imprimirá. Conviene mirar que no falte el punto de ninguna letra. La imagen original se conserva.';
    case 'thicken':
      return 'Los trazos finos crecen hasta ese ancho en su propio color. Conviene mirar que no se cierre ningún hueco. La imagen original se conserva.';
    case 'defringe':
      return 'Los bordes toman el color de lo que hay detrás. La imagen original se conserva.';
    case 'threshold':
      return 'Lo más tenue desaparece y lo demás se imprime opaco. Los bordes suaves quedan. La imagen original se conserva.';
    case 'screen':
      return 'Puntos de tinta plena forman el tono y cubren lo mismo. Los bordes suaves quedan. La imagen original se conserva.';
  }
}

function done(mend: Mend, ways: Ways): string {
  switch (mend.kind) {
    case 'knock-out':
      return `Hecha aquí calando ${mend.colour}.`;
    case 'take-off':
      return `Hecha aquí quitando lo menor de ${fineLength(mend.largest, ways)}.`;
    case 'thicken':
      return `Hecha aquí engrosando los trazos a ${fineLength(mend.to, ways)}.`;
    case 'defringe':
      return 'Hecha aquí quitando el cerco.';
    case 'threshold':
      return `Hecha aquí haciendo opaco lo que pasa del ${wholePercent(mend.from, ways)} de opacidad.`;
    case 'screen':
      return `Hecha aquí con una trama de ${lines(mend, ways)} y puntos desde ${fineLength(mend.least, ways)}.`;
  }
}

const names: Readonly<Record<Mend['kind'], string>> = {
  'knock-out': 'calado',
  'take-off': 'limpio',
  thicken: 'engrosado',
  defringe: 'sin cerco',
  threshold: 'opaco',
  screen: 'tramado',
};

/** What is said of mending an artwork. */
export const mends: Words['mends'] = {
  offer: (code) => {
    switch (code) {
      case 'ground':
        return 'Calar el fondo…';
      case 'black-on-black':
        return 'Calar el negro…';
      case 'strays':
        return 'Quitar lo suelto…';
      case 'specks':
        return 'Quitar las motas…';
      case 'fringe':
        return 'Quitar el cerco…';
      case 'see-through':
        return 'Hacerlo opaco, o puntos…';
      default:
        return 'Engrosar los trazos…';
    }
  },
  title,
  hint,
  tolerance: 'Tolerancia',
  enclosed: 'también donde está encerrado, como en las letras',
  specksToo: 'también las motas dentro del diseño',
  softHow: 'Tinta translúcida',
  softHows: { threshold: 'opaca o nada', screen: 'una trama de puntos' },
  threshold: 'Opaca desde una opacidad de',
  lines: 'Líneas por pulgada',
  dots: (least) => `Ningún punto ni hueco menor de ${least}: los límites de este taller.`,
  ink: ({ before, after }, ways) =>
    `Tinta blanca ${inkArea(before.white, ways)}, después ${inkArea(after.white, ways)}; color ${inkArea(before.colour, ways)}, después ${inkArea(after.colour, ways)}.`,
  use: 'Usar esta imagen',
  fileName: (fileName, kind) => `${fileName.replace(/\.[a-z0-9]+$/i, '')}, ${names[kind]}.png`,
  inUse: (size) =>
    `La imagen arreglada está en uso. El diseño conserva su tamaño; lo que queda de la imagen se imprime a ${size}. Deshacer trae la otra de vuelta.`,
  nothingLeft: 'No quedaría nada de la imagen. Hay que quitar menos.',
  tooLarge:
    'Esta imagen es demasiado grande para arreglarla aquí. Hay que exportarla antes a su tamaño impreso con 300 ppp.',
  madeFrom: done,
  backToFirst: 'Volver a la imagen de la que salió',
};
