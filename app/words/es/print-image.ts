import type { Words } from '../en';
import { counted, roughSize, type Ways } from '../format';

const images = (count: number, ways: Ways) => counted(count, 'imagen', 'imágenes', ways);

const partNames = {
  run: () => '',
  chosen: () => ' copias elegidas',
  span: (count: number) => ` tramo ${count}`,
  sheet: (count: number) => ` hoja ${count}`,
} as const;

const stoppedNote = 'Parado. No ha quedado ninguna imagen a medias.';

export const printImage: Words['printImage'] = {
  title: 'Imagen para imprimir',
  what: 'Qué se guarda',
  whats: {
    run: 'la tirada entera, una imagen',
    rest: 'lo que aún no está impreso, una imagen',
    spans: (count, ways) => `cada tramo por separado: ${images(count, ways)}`,
    sheets: (count, ways) => `todas las hojas: ${images(count, ways)}`,
    span: (count) => `solo el tramo ${count}`,
    sheet: (count) => `solo la hoja ${count}`,
    chosen: (count, ways) => counted(count, 'copia seleccionada', 'copias seleccionadas', ways),
  },
  askedOnce: 'Se pregunta una vez: lo que se guarda aquí, el plan del día y el blanco lo siguen.',
  cutsLose:
    'Cada corte gasta la película del cabezal a la cuchilla, y esta tirada no la tiene en cuenta. Hay que ponerla como «Blanco por corte» de la película.',
  liesWet: (time, limit) =>
    `Enviada sin pausa, su primera tinta quedaría húmeda ${time}, no ${limit} como mucho. Mejor guardar cada tramo aparte, o bloquear una tirada más corta.`,
  ppi: 'Píxeles por pulgada',
  ppiHint: '300 para casi todo; nunca más de lo que imprime la impresora.',
  ppiProblem: (least, most) => `Hay que escribir un número entero de ${least} a ${most}.`,
  form: 'Archivo',
  forms: { png: 'PNG', pdf: 'PDF, una página a tamaño real', tiff: 'TIFF' },
  tooLarge: {
    pdf: (longest) =>
      `Una página PDF admite hasta ${longest} y 60 millones de píxeles. Lo que es mayor se guarda como PNG; para PDF hay que guardar los tramos de uno en uno.`,
    tiff: () =>
      'Un TIFF admite hasta 4 GB, unos 850 millones de píxeles. Lo que es mayor se guarda como PNG; para TIFF hay que guardar los tramos de uno en uno.',
  },
  whiteTitle: 'Tinta blanca',
  white: 'Guardar también el blanco, contraído',
  whiteHints: {
    png: 'Como PNG gris del mismo tamaño junto a la imagen. Es blanco donde va toda la tinta blanca, negro donde no va.',
    pdf: 'Como tinta plana propia, con sobreimpresión. Su tono dice cuánto blanco hay.',
    tiff: 'Como canal extra tras los colores y su transparencia: 255 donde va toda la tinta blanca.',
  },
  choke: 'Contracción del blanco por lado',
  chokeHint: 'La misma que en los límites de este taller.',
  whiteName: 'Nombre del blanco',
  whiteNameHint: 'Como lo busca el programa de la impresora.',
  whiteNameProblem: 'Hay que escribir hasta 60 letras o cifras sin acentos, y no un color de proceso.',
  whiteFile: (name) => name.replace(/\.png$/, ' blanco.png'),
  mirror: 'Reflejar la imagen',
  mirrorHint:
    'Hay que dejarlo sin marcar si el programa de la impresora ya refleja, como es habitual. La tira de prueba lo dice.',
  wouldRead:
    'Según la tira de prueba, la película saldría legible con la tinta hacia arriba y al planchar quedaría reflejada. Hay que cambiar el reflejo, o imprimir la tira otra vez.',
  turnedRound:
    'Girada media vuelta, porque esta impresora imprime primero el extremo final de la imagen. Así sale primero el inicio de la tirada.',
  feed: 'Compensar el avance en la imagen',
  feedHint: (long) =>
    `Según la tira de prueba el avance de la impresora es ${long} de la longitud. La imagen se divide por él y el plano de corte le sigue.`,
  feedUnknown: 'La tira de prueba no se ha medido, así que no hay nada que compensar.',
  marks: 'Marcas en la merma',
  marksHint: 'Las marcas retienen polvo como todo lo impreso. Se leen con el inicio de la tirada arriba.',
  corners: 'Esquinas de registro para un cortador de contornos, en la merma de cada tramo',
  ticks: 'Barras en los bordes, donde van las líneas de corte',
  numbers: (tall) => `El número de cada copia en la separación de al lado, de ${tall} de alto`,
  names: 'Los nombres del pedido y del transfer con él, donde quepan',
  unnumbered: (count, ways) =>
    `${counted(count, 'copia no tiene', 'copias no tienen', ways)} sitio para un número en la separación.`,
  ink: 'La imagen lleva los colores sobre fondo transparente. La tinta blanca y su contracción las hace el programa de la impresora.',
  inkWithWhite:
    'Hay que apagar el blanco y la contracción que el programa de la impresora hace por sí mismo. Antes conviene imprimir una tira de prueba.',
  file: (pixels, size) => `${pixels} píxeles, ${size}`,
  more: (count, ways) => `y ${images(count, ways)} más`,
  about: (bytes, ways) => `Unos ${roughSize(bytes, ways)} en total.`,
  loading: 'Buscando el arte…',
  noArtwork: (names) =>
    `Sin arte: ${names}. Hay que darlo al transfer en la sala Pedidos, o dejar sus copias en blanco.`,
  lostArtwork: (names) =>
    `El arte ya no está en este dispositivo: ${names}. Hay que soltarlo otra vez en el transfer, o dejar sus copias en blanco.`,
  leaveBlank: 'Dejarlas en blanco en la película',
  write: 'Guardar la imagen',
  writeAll: (count, ways) => `Guardar ${images(count, ways)}`,
  stop: 'Parar',
  writing: 'Guardando la imagen',
  goesOn: 'Mientras tanto se puede seguir trabajando.',
  noFiles:
    'Este navegador no puede guardar una imagen de este tamaño. Hay que abrir Rollwright en un navegador actual, y no en una ventana privada.',
  notNoted:
    'Esta pestaña ya solo muestra, así que la imagen no queda anotada en su tirada. Hay que guardarla otra vez en la pestaña de trabajo.',
  saved: (names, ways) =>
    names.length === 1
      ? `${names[0]} está guardada.`
      : `${counted(names.length, 'imagen guardada', 'imágenes guardadas', ways)}.`,
  stoppedNote,
  problems: (problem, name) => {
    switch (problem.code) {
      case 'stopped':
        return stoppedNote;
      case 'disk-full':
        return 'El disco está lleno, así que la imagen no se ha guardado. Hay que liberar espacio, o guardar los tramos de uno en uno, y probar otra vez.';
      case 'not-written':
        return 'La imagen no se ha podido guardar. Hay que comprobar que se puede escribir en la carpeta y probar otra vez.';
      case 'artwork':
        return `La imagen no se ha guardado: el arte ${name} ya no se puede leer. Hay que soltarlo otra vez en su transfer.`;
    }
  },
  fileName: (run, part, kind) =>
    `${run}${'number' in part ? partNames[part.kind](part.number) : partNames[part.kind]()}.${kind}`,
};
