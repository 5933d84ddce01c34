import type { Words } from '../en';

export const strip: Words['strip'] = {
  title: 'Tira de prueba',
  intro:
    'Hay que imprimir esta tira una vez en cada impresora, con su propio programa ajustado como para cualquier trabajo. Después se dice aquí qué ha salido; la imagen para imprimir y el plano de corte se adaptan.',
  save: 'Guardar la tira de prueba',
  fileName: 'rollwright tira de prueba.png',
  firstEnd: '¿Qué extremo salió primero?',
  ends: { lead: 'END 1', tail: 'END 2' },
  inkUp: '¿Cómo se lee la F, con la tinta hacia arriba?',
  shows: { mirrored: 'reflejada, como es habitual', plain: 'al derecho' },
  measured: 'De barra a barra, medido',
  feed: (measure, factor) =>
    `${measure} en la tira, entre los bordes interiores de las dos barras. Ahora las distancias se multiplican por ${factor}.`,
  implausible: (measure) =>
    `Se aparta más de un 5 % de ${measure}, y ningún avance lo hace. Hay que medir otra vez entre los bordes interiores de las barras.`,
  after: 'Manos y tijeras lejos del cabezal mientras sale la tira.',
  reset: 'Como si no se hubiera impreso',
};
