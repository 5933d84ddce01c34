import type { CutMapWords, FilmFacts } from '../../../src/output/cut-map';
import type { Words } from '../en';
import { counted as countedIn, isTrue, number, onMap, ruleOf, type Ways } from '../format';

/** Whether distances are those of film that the printer feeds long or short, or its image makes up for it. */
function feedTold(stretch: number, imageFeed: number, percent: (share: number) => string): string[] {
  const longer = (by: number) => `${percent(Math.abs(by - 1))} más ${by > 1 ? 'larga' : 'corta'}`;
  return [
    ...(isTrue(stretch)
      ? []
      : [`Distancias de lo impreso: la película sale ${longer(stretch)} de lo previsto.`]),
    ...(isTrue(imageFeed)
      ? []
      : [`La imagen se guarda ${longer(1 / imageFeed)}, para que la película salga como se previó.`]),
  ];
}

/** What the printed map says. Both measures stand side by side: a shop has one tape or the other. */
function onPaper(ways: Pick<Ways, 'unit' | 'locale'>): CutMapWords {
  const { locale } = ways;
  const { own, other, film, otherFilm, size, sheet, percent, count, made, due } = onMap(ways);
  const counted = (value: number, one: string, many: string) => countedIn(value, one, many, { locale });
  const copies = (value: number) => counted(value, 'copia', 'copias');
  const sheets = ({ count: many, width, length }: Extract<FilmFacts, { kind: 'sheets' }>) =>
    `${counted(many, 'hoja', 'hojas')}, ${sheet(width, length)}`;
  const shared = (strip: string | null) => (strip === null ? '' : `, la franja ${strip} está en ambas`);
  return {
    title: (run) => `Plano de corte · ${run}`,
    facts: ({ film: on, copies: many, date }) =>
      [
        ...(on.kind === 'roll' ? [`Rollo ${own(on.width)}`, film(on.length)] : [sheets(on)]),
        copies(many),
        made(date),
      ].join(' · '),
    view: (view, mirrored) =>
      view === 'on-screen'
        ? { name: 'COMO SE VE EN PANTALLA', note: 'la pantalla girada un cuarto' }
        : {
            name: 'TINTA ARRIBA, COMO SALE',
            note: mirrored ? 'reflejada a lo ancho' : 'no reflejada en esta impresora',
          },
    page: (page, of) => `página ${count(page)} de ${count(of)}`,
    scale: (scale) => `escala 1 : ${number(scale, locale, 0, 2)}`,
    leadingEdge: 'borde de inicio',
    distance: own,
    otherRuler: other,
    fromPrevious: 'desde el anterior',
    fromStart: (length) => `desde inicio ${own(length)}`,
    cutOff: 'cortar del rollo aquí',
    sheet: (of, all) => `Hoja ${count(of)} de ${count(all)}`,
    sheetSize: sheet,
    nextSheet: (page) => `hoja siguiente: página ${count(page)}`,
    spoiled: 'estropeado',
    copy: (code, of) => `${code} ${of}`,
    size,
    span: (of) => `tramo ${of}`,
    spanDone: (of, many, length) => `tramo ${of}, ${copies(many)}, ${own(length)}`,
    sheetDone: (of, many) => `hoja ${count(of)}, ${copies(many)}`,
    due: (day) => (day === null ? '' : `, para el ${due(day)}`),
    numbers: (stretches) =>
      `n.º ${stretches.map(([from, to]) => (from === to ? count(from) : `${count(from)}–${count(to)}`)).join(', ')}`,
    pile: (orders) => orders.map(({ code, count: many }) => `${count(many)} × ${code}`).join(' · '),
    garments: 'Prendas de estos pedidos',
    count,
    onThisPage: 'en esta página',
    inAll: 'en total',
    allCopies: 'copias',
    totals: (on, spans) =>
      on.kind === 'sheets'
        ? sheets(on)
        : `${film(on.length)} (${otherFilm(on.length)}) de película, ${counted(spans, 'tramo', 'tramos')}`,
    feed: (stretch, imageFeed) => feedTold(stretch, imageFeed, percent),
    continuesOn: (page, strip) => `sigue en la página ${count(page)}${shared(strip)}`,
    continuedFrom: (page, strip) => `viene de la página ${count(page)}${shared(strip)}`,
    moreOnPage: (left, page) => `y ${counted(left, 'transfer', 'transfers')} más, ver página ${count(page)}`,
    everyTransfer: 'Todos los transfers de esta tirada',
    tooSmall: 'Demasiado pequeñas para nombrarlas en el plano',
    tooSmallCopy: (name, start, left, on) =>
      `${name}${on === null ? ', desde inicio' : `, hoja ${count(on)}, desde su inicio`} ${own(start)}, desde la izquierda ${own(left)}`,
    nothing: 'Todavía no hay ninguna copia en la película, así que no hay nada que cortar.',
    noKnifeLines:
      'Ningún corte recto separa esta distribución en tramos lo bastante cortos. Hay que distribuir otra vez antes de cortar.',
    caution: {
      lead: 'Cuchilla en la ranura, película plana.',
      rest: 'Sin tijeras cerca del cabezal: la película levantada puede tocarlo. La cuchilla corta: alejarla de la mano que sujeta la película.',
    },
    rule: `esta regla mide ${ruleOf(ways)}: si no, imprimir a tamaño real`,
    closing:
      'Antes que esta hoja van las fichas técnicas, las normas locales y el personal autorizado o capacitado del taller.',
  };
}

export const cutMap: Words['cutMap'] = {
  onPaper,
  title: 'Plano de corte',
  back: 'Atrás',
  paper: 'Papel',
  papers: { a4: 'A4', letter: 'Carta' },
  view: 'Visto',
  form: 'Orientación',
  forms: { portrait: 'vertical', landscape: 'horizontal' },
  type: 'Cifras',
  types: { normal: 'normales', large: 'grandes' },
  spans: 'Páginas',
  spansOptions: { filled: 'llenas', single: 'una por tramo' },
  pictures: 'Imágenes',
  picturesOptions: { shown: 'en la leyenda', none: 'ninguna' },
  garmentLine: (code, style, colour, size, count) =>
    `${code}  ${[style, colour, size].filter(Boolean).join(', ')} × ${count}`,
  strip: 'Tira de prueba',
  views: { 'ink-up': 'tinta arriba, como sale', 'on-screen': 'como en pantalla' },
  print: 'Imprimir',
  save: 'Guardar como PDF',
  saving: 'Haciendo el PDF…',
  saved: (file) => `${file} está guardado en las descargas.`,
  actualSize: (ways) =>
    `Imprimir a tamaño real, 100 %, sin márgenes: la regla al pie de la hoja debe medir ${ruleOf(ways)}.`,
  sheet: (page, of) => `Plano de corte, hoja ${page} de ${of}`,
  fileName: (run) => `plano de corte ${run}`,
  cuts: {
    caption: 'Cortes, en el orden en que sale la película',
    cut: 'Corte',
    fromPrevious: 'Desde el corte anterior',
    fromStart: 'Desde el inicio',
    copies: 'Copias en este tramo',
    both: (own, other) => `${own}, ${other}`,
  },
};
