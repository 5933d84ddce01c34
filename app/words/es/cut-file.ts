import type { Words } from '../en';
import { counted } from '../format';

const parts = { span: 'tramo', sheet: 'hoja' } as const;

export const cutFile: Words['cutFile'] = {
  title: 'Archivo de corte',
  lead: 'La línea alrededor de cada copia, a media separación de lo impreso, a tamaño real, para un cortador de contornos. Las copias van en el orden de corte.',
  form: 'Archivo',
  forms: { svg: 'SVG', dxf: 'DXF, versión 12, en milímetros' },
  view: 'La película está',
  corners: 'Esquinas de registro en la merma',
  cornersHint:
    'Esquinas en L que llevan la imagen para imprimir y este archivo. Hay que guardar también la imagen con ellas.',
  noCorners: (count, ways) =>
    `${counted(count, 'esquina no tiene', 'esquinas no tienen', ways)} sitio en la merma: ni en la imagen ni en el archivo.`,
  boxed: (count, ways) =>
    `${counted(count, 'copia no tiene contorno y se corta', 'copias no tienen contorno y se cortan', ways)} por su rectángulo.`,
  loose: (count, ways) =>
    `${counted(count, 'copia cae', 'copias caen', ways)} en varios trozos al cortar. Hay que unir las partes en el arte, o cortar más ancho a mano.`,
  lies: {
    plain: 'Las líneas van como en pantalla, sin reflejar.',
    mirrored: 'Las líneas van reflejadas a lo ancho de la película.',
  },
  caution:
    'Hay que probar primero las líneas en un retazo. La cuchilla corta y se mueve sola: manos lejos. Hay que seguir el manual del cortador.',
  save: 'Guardar archivo de corte',
  saveAll: (count, ways) =>
    `Guardar ${counted(count, 'archivo de corte', 'archivos de corte', ways)} en un archivo comprimido`,
  saved: (file) => `${file} está guardado en las descargas.`,
  note: (cut, corners, lies) =>
    `Todas las longitudes son milímetros a tamaño real. ${cut}: líneas de corte, en su orden. ${corners}: esquinas impresas, no se cortan. ${lies}`,
  fileName: (run, part) =>
    `archivo de corte ${run}${part === null ? '' : ` ${parts[part.kind]} ${part.number}`}`,
};
