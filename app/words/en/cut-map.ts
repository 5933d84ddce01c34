import type { CutMapWords, FilmFacts } from '../../../src/output/cut-map';
import { counted as countedIn, isTrue, number, onMap, ruleOf, type Ways } from '../format';

/** Whether distances are those of film that the printer feeds long or short, or its image makes up for it. */
function feedTold(stretch: number, imageFeed: number, percent: (share: number) => string): string[] {
  const longer = (by: number) => `${percent(Math.abs(by - 1))} ${by > 1 ? 'longer' : 'shorter'}`;
  return [
    ...(isTrue(stretch)
      ? []
      : [`Distances are as printed: the film comes out ${longer(stretch)} than planned.`]),
    ...(isTrue(imageFeed)
      ? []
      : [`The image is written ${longer(1 / imageFeed)}, so that the film comes out as planned.`]),
  ];
}

/** What the printed map says. Both measures stand side by side: a shop has one tape or the other. */
function onPaper(ways: Pick<Ways, 'unit' | 'locale'>): CutMapWords {
  const { locale } = ways;
  const { own, other, film, otherFilm, size, sheet, percent, count, made, due } = onMap(ways);
  const counted = (value: number, one: string, many: string) => countedIn(value, one, many, { locale });
  const copies = (value: number) => counted(value, 'copy', 'copies');
  const sheets = ({ count: many, width, length }: Extract<FilmFacts, { kind: 'sheets' }>) =>
    `${counted(many, 'sheet', 'sheets')}, ${sheet(width, length)}`;
  const shared = (strip: string | null) => (strip === null ? '' : `, strip ${strip} is on both`);
  return {
    title: (run) => `Cut map · ${run}`,
    facts: ({ film: on, copies: many, date }) =>
      [
        ...(on.kind === 'roll' ? [`Roll ${own(on.width)}`, film(on.length)] : [sheets(on)]),
        copies(many),
        made(date),
      ].join(' · '),
    view: (view, mirrored) =>
      view === 'on-screen'
        ? { name: 'AS SEEN ON SCREEN', note: 'the screen turned by a quarter' }
        : {
            name: 'INK UP, AS IT COMES OUT',
            note: mirrored ? 'mirrored across the film' : 'not mirrored on this printer',
          },
    page: (page, of) => `page ${count(page)} of ${count(of)}`,
    scale: (scale) => `scale 1 : ${number(scale, locale, 0, 2)}`,
    leadingEdge: 'leading edge',
    distance: own,
    otherRuler: other,
    fromPrevious: 'from the cut before',
    fromStart: (length) => `from start ${own(length)}`,
    cutOff: 'cut off the roll here',
    sheet: (of, all) => `Sheet ${count(of)} of ${count(all)}`,
    sheetSize: sheet,
    nextSheet: (page) => `next sheet: page ${count(page)}`,
    spoiled: 'spoiled',
    copy: (code, of) => `${code} ${of}`,
    size,
    span: (of) => `span ${of}`,
    spanDone: (of, many, length) => `span ${of}, ${copies(many)}, ${own(length)}`,
    sheetDone: (of, many) => `sheet ${count(of)}, ${copies(many)}`,
    due: (day) => (day === null ? '' : `, due ${due(day)}`),
    numbers: (stretches) =>
      `no. ${stretches.map(([from, to]) => (from === to ? count(from) : `${count(from)}–${count(to)}`)).join(', ')}`,
    pile: (orders) => orders.map(({ code, count: many }) => `${count(many)} × ${code}`).join(' · '),
    garments: 'Garments of these orders',
    count,
    onThisPage: 'on this page',
    inAll: 'in all',
    allCopies: 'copies',
    totals: (on, spans) =>
      on.kind === 'sheets'
        ? sheets(on)
        : `${film(on.length)} (${otherFilm(on.length)}) of film, ${counted(spans, 'span', 'spans')}`,
    feed: (stretch, imageFeed) => feedTold(stretch, imageFeed, percent),
    continuesOn: (page, strip) => `goes on on page ${count(page)}${shared(strip)}`,
    continuedFrom: (page, strip) => `from page ${count(page)}${shared(strip)}`,
    moreOnPage: (left, page) => `and ${counted(left, 'transfer', 'transfers')} more, see page ${count(page)}`,
    everyTransfer: 'Every transfer of this run',
    tooSmall: 'Too small to be named on the map',
    tooSmallCopy: (name, start, left, on) =>
      `${name}${on === null ? ', from start' : `, sheet ${count(on)}, from its start`} ${own(start)}, from left ${own(left)}`,
    nothing: 'No copy lies on the film yet, so there is nothing to cut.',
    noKnifeLines:
      'No straight cuts can part this layout into spans short enough. Lay it out again before you cut.',
    caution: {
      lead: 'Blade in the slot, film held flat.',
      rest: 'No scissors near the print head: lifted film can touch it. The blade is sharp: cut away from the hand that holds the film.',
    },
    rule: `this rule is ${ruleOf(ways)}: if not, print at actual size`,
    closing:
      'The makers’ data sheets, local codes and your shop’s own licensed or trained practice come before anything on this sheet.',
  };
}

/** The cut map's part of the catalogue: the sheets, and the view in which they are looked at. */
export const cutMap = {
  onPaper,
  title: 'Cut map',
  back: 'Back',
  paper: 'Paper',
  papers: { a4: 'A4', letter: 'Letter' },
  view: 'Seen',
  form: 'Orientation',
  forms: { portrait: 'portrait', landscape: 'landscape' },
  type: 'Figures',
  types: { normal: 'normal', large: 'large' },
  spans: 'Pages',
  spansOptions: { filled: 'filled', single: 'one for each span' },
  pictures: 'Pictures',
  picturesOptions: { shown: 'in the legend', none: 'none' },
  garmentLine: (code: string, style: string, colour: string, size: string, count: string) =>
    `${code}  ${[style, colour, size].filter(Boolean).join(', ')} × ${count}`,
  strip: 'Test strip',
  views: { 'ink-up': 'ink up, as it comes out', 'on-screen': 'as on screen' },
  print: 'Print',
  save: 'Save as PDF',
  saving: 'Making the PDF…',
  saved: (file: string) => `${file} is saved with your downloads.`,
  actualSize: (ways: Ways) =>
    `Print at actual size, 100%, without margins: the rule at the foot of the sheet must measure ${ruleOf(ways)}.`,
  sheet: (page: number, of: number) => `Cut map, sheet ${page} of ${of}`,
  fileName: (run: string) => `cut map ${run}`,
  cuts: {
    caption: 'Cuts, in the order in which the film comes out',
    cut: 'Cut',
    fromPrevious: 'From the cut before',
    fromStart: 'From the start',
    copies: 'Copies in this span',
    both: (own: string, other: string) => `${own}, ${other}`,
  },
};
