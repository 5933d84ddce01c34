import type { Words } from '../en';
import { counted, whole } from '../format';

const compared: Words['log']['compared'] = {
  film: 'Película',
  white: 'Tinta blanca',
  colour: 'Tinta de color',
  powder: 'Polvo',
  printer: 'Tiempo de impresora',
  hands: 'Mano de obra',
  press: 'Tiempo de plancha',
};

export const log: Words['log'] = {
  title: 'Registro',
  head: (runs, ways) => counted(runs, 'tirada cerrada', 'tiradas cerradas', ways),
  empty:
    'Todavía no hay nada cerrado. Una tirada es una distribución impresa de una vez. La que se cierra en la sala Planchado queda aquí, con lo previsto y lo gastado. También dice qué se estropeó y por qué.',
  toPress: 'Ir a la sala Planchado',
  one: 'Hay una tirada cerrada. A partir de dos, aquí se ve cómo evolucionan la merma, la película, lo estropeado y lo previsto.',
  table: 'Tiradas cerradas',
  run: 'Tirada',
  day: 'Cerrada',
  film: 'Película',
  waste: 'Merma',
  colour: 'Tinta de color',
  white: 'Tinta blanca',
  powder: 'Polvo',
  hands: 'Mano de obra',
  spoiled: 'Estropeado',
  planned: (amount) => `previsto: ${amount}`,
  notMeasured: 'sin medir',
  none: 'nada',
  asTable: 'Como tabla',
  wasteTitle: 'Merma de cada tirada',
  wasteTold: (lately, last, before, ways) =>
    `En las últimas ${whole(last, ways)} tiradas la merma fue del ${lately}${
      before === null ? '' : `; en otras tantas antes, del ${before}`
    }. Las separaciones cuentan como merma.`,
  wasteLegend: 'Los puntos son lo gastado; la línea discontinua, lo previsto.',
  wastePlanned: 'Merma prevista',
  weekTitle: 'Película por semana',
  weekTold: (latest, mean, weeks, ways) =>
    `La última semana gastó ${latest}; la media de ${counted(weeks, 'semana', 'semanas', ways)} es ${mean}.`,
  week: 'Semana del',
  runs: 'Tiradas',
  spoiledTitle: 'Estropeado, y por qué',
  spoiledTold: (copies, share, most, ofMost, ways) =>
    `${counted(copies, 'copia se estropeó', 'copias se estropearon', ways)}, el ${share} de todas. Lo más frecuente: ${most}, ${whole(ofMost, ways)}.`,
  spoiledNone: 'No se estropeó ninguna copia.',
  spoiledFilm: 'película estropeada',
  reasonAt: (reason, stage) => `${reason}, ${stage}`,
  reason: 'Por qué',
  copies: 'Copias',
  plannedTitle: 'Previsto y gastado',
  what: 'Comparar',
  compared,
  plannedTold: (what, share, runs, ways) =>
    `${compared[what]}: ${share} de lo previsto, en la mediana de ${counted(runs, 'tirada que lo midió', 'tiradas que lo midieron', ways)}.`,
  plannedFew: (what) => `${compared[what]}: lo midieron menos de dos tiradas.`,
  plannedLegend: 'En la línea discontinua lo previsto y lo gastado son iguales; por encima se gastó más.',
  plannedColumn: 'Previsto',
  usedColumn: 'Gastado',
  airTitle: 'Estropeado, y el ambiente',
  airTold: (damp, mild, dry, runs, ways) =>
    `Copias estropeadas: ${mild} con una humedad del 40–60 %; por debajo, ${dry}; por encima, ${damp}. ${counted(runs, 'tirada la anotó', 'tiradas la anotaron', ways)}. El 40–60 % es práctica común; mandan las fichas de los fabricantes.`,
  airFew:
    'Menos de dos tiradas anotaron la humedad. Poniéndola al cerrar una tirada, aquí se ve junto a lo que se estropeó.',
  airNone: 'ninguna copia',
  humidity: 'Humedad',
  share: 'Parte estropeada',
  lotTitle: 'Lotes',
  lotTold: (lots, ways) =>
    `${counted(lots, 'lote en uso', 'lotes en uso', ways)}, cada uno con lo que se estropeó mientras tanto.`,
  lotNone: 'No se anotó ningún lote. Anotándolos en la sala Almacén, se toman al cerrar una tirada.',
  lot: 'Lote',
  lotKind: 'De',
  lotKinds: { film: 'película', colour: 'tinta de color', white: 'tinta blanca', powder: 'polvo' },
};
