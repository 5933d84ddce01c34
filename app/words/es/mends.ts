import type { Mend } from '../../../src/model';
import type { Words } from '../en';
import { fineLength, type Ways } from '../format';

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
  }
}

const names: Readonly<Record<Mend['kind'], string>> = {
  'knock-out': 'calado',
  'take-off': 'limpio',
  thicken: 'engrosado',
  defringe: 'sin cerco',
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
      default:
        return 'Engrosar los trazos…';
    }
  },
  title,
  hint,
  tolerance: 'Tolerancia',
  enclosed: 'también donde está encerrado, como en las letras',
  specksToo: 'también las motas dentro del diseño',
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
