import type { Words } from '../en';
import { counted, listed, whole } from '../format';

export const cards: Words['cards'] = {
  title: 'Fichas para imprimir',
  back: 'Atrás',
  which: 'Ficha',
  kinds: {
    run: 'ficha de la tirada',
    day: 'cronograma del día',
    pick: 'lista de preparación',
    care: 'tarjetas de cuidado',
    packing: 'notas de entrega',
  },
  print: 'Imprimir',
  dayTitle: (run) => `El día · ${run}`,
  runTitle: (run) => `Ficha de la tirada · ${run}`,
  runFacts: (copies, peel, made, ways) =>
    `${counted(copies, 'copia', 'copias', ways)} · la película se pela ${peel} · ${made}`,
  coated: 'cara con recubrimiento comprobada',
  edgeFlat: 'borde plano',
  bareCorner: 'una esquina sin polvo, para pelar por ella',
  cureLook:
    'Bien: brillante, como piel de naranja. Mate y granulado: seguir curando. Amarillo, quebradizo: reimprimir. Aceitoso: humedad.',
  transfersOnly: 'Solo transfers: planos, secos, fechados, sin planchar.',
  together: (names, garments, ways) =>
    `Planchar juntos: ${names.join(' + ')}, ${counted(garments, 'prenda', 'prendas', ways)}.`,
  garment: (name, count, ways) => `${name} × ${whole(count, ways)}`,
  garmentPart: (name, count, of, ways) =>
    count < of ? `${name} × ${whole(count, ways)} de ${whole(of, ways)}` : `${name} × ${whole(count, ways)}`,
  rest: ({ came, follows, waiting }, ways) =>
    [
      ...(came.length > 0 ? [`Una parte vino en ${listed(came, ways)}.`] : []),
      ...(follows.length > 0 ? [`El resto sigue en ${listed(follows, ways)}.`] : []),
      ...(waiting > 0 ? [`${counted(waiting, 'copia espera', 'copias esperan', ways)} una tirada.`] : []),
    ].join(' '),
  allTaken: 'Nada que preparar: estas prendas ya se tomaron para una tirada anterior.',
  garmentsAtLeast: (count, transfers, ways) =>
    `${counted(count, 'prenda', 'prendas', ways)} como mínimo, para ${listed(transfers, ways)}`,
  measures: {
    'left chest': (along, aside) =>
      `centro a ${along} bajo la costura del hombro junto al cuello, a ${aside} del medio.`,
    'right chest': (along, aside) =>
      `centro a ${along} bajo la costura del hombro junto al cuello, a ${aside} del medio.`,
    front: (along) => `borde superior a ${along} bajo el cuello, centrado.`,
    back: (along) => `borde superior a ${along} bajo el cuello, centrado.`,
    sleeve: (along) => `centrado en el doblez, a ${along} sobre el dobladillo.`,
    'neck tag': (along) => `por dentro, a ${along} bajo la costura del cuello, centrado.`,
    pocket: (along) => `borde superior a ${along} bajo el dobladillo del bolsillo, centrado en él.`,
    hood: (along) => `plano en un lado, a ${along} del borde de la abertura.`,
    leg: (along) => `en el muslo, borde superior a ${along} bajo la cintura.`,
    cap: (along) => `en el panel frontal, borde inferior a ${along} sobre la visera, centrado.`,
    tote: (along) => `borde superior a ${along} bajo la abertura, centrado.`,
  },
  commonPractice: 'Práctica común, sin fuente.',
  pickTitle: (run) => `Lista de preparación · ${run}`,
  replacement: (count, ways) => `${counted(count, 'prenda', 'prendas', ways)} más, por las estropeadas`,
  care: [
    'Esperar 24 horas antes del primer lavado.',
    'Lavar del revés, en frío, con programa delicado.',
    'Sin blanqueador ni suavizante.',
    'Secar al aire o en frío.',
    'No planchar sobre el estampado.',
  ],
  transferCare: ['Guardar planos, secos y a oscuras, en su bolsa.', 'Placa caliente: manos lejos.'],
  pressOn: (fabric, recipe) => `Sobre ${fabric}: ${recipe}.`,
  pressTry:
    'Práctica común o valores de este taller: probar antes uno en un retazo. Manda la ficha técnica de la película.',
  bagsFor: (code) => `Bolsas, ${code}`,
  partBag: (number, of, ways) =>
    `parte del pedido, bolsa ${whole(number, ways)} de ${whole(of, ways)} de esta tirada`,
  bag: (number, of, ways) => `bolsa ${whole(number, ways)} de ${whole(of, ways)}`,
  noShopName: 'Las notas llevan el nombre y la marca del taller cuando se escribe en',
  handovers: { collect: 'Se recoge.', ship: 'Se envía.' },
  stretched: 'estirado, y el estampado aguanta',
  flatAndDry: 'plano, seco y fechado',
  counted: 'contado',
  packed: (when) => `Preparada el ${when}`,
};
