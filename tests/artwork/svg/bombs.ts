const svg = (inner: string) => `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100">${inner}</svg>`;
const many = (count: number, part: (at: number) => string) =>
  Array.from({ length: count }, (_, at) => part(at)).join('');

/** Each level draws the one below twice, so that 24 of them draw 2^24. */
const doubled = (levels: number, level: (at: number) => string) => many(levels, (at) => level(at + 1));
const blur = '<feGaussianBlur stdDeviation="3"/>';

/** SVGs that would hold a page up, each with what they have too much of. */
export const bombs: readonly (readonly [name: string, problem: string, text: string])[] = [
  [
    '300,000 blurred circles',
    'many-elements',
    svg(`<filter id="f">${blur}</filter>${many(300_000, () => '<circle r="9" filter="url(#f)"/>')}`),
  ],
  [
    'a use of uses, 24 deep',
    'many-elements',
    svg(
      `<g id="g0"><path d="M0 0h9"/></g>${doubled(24, (at) => `<g id="g${at}"><use href="#g${at - 1}"/><use href="#g${at - 1}"/></g>`)}`,
    ),
  ],
  [
    'uses by the older address',
    'many-elements',
    svg(
      `<path id="g0" d="M0 0h9"/>${doubled(24, (at) => `<g id="g${at}"><use xlink:href="#g${at - 1}"/><use href="#nothing" xlink:href="#g${at - 1}"/></g>`)}`,
    ),
  ],
  [
    'uses whose addresses are written by references',
    'many-elements',
    svg(
      `<path id="g0" d="M0 0h9"/>${doubled(24, (at) => `<g id="g${at}"><use href="&#35;g${at - 1}"/><use href="&#x23;g${at - 1}"/></g>`)}`,
    ),
  ],
  [
    'patterns painted with patterns',
    'many-elements',
    svg(
      `${doubled(
        24,
        (at) =>
          `<pattern id="p${at}" width="1" height="1"><rect fill="url(#p${at - 1})"/><rect style="fill: url('#p${at - 1}')"/></pattern>`,
      )}<rect fill="url(#p24)"/>`,
    ),
  ],
  [
    'patterns that all within a group inherit',
    'many-elements',
    svg(
      `<pattern id="p">${many(1_000, () => '<path/>')}</pattern><g fill="url(#p)">${many(1_000, () => '<path/>')}</g>`,
    ),
  ],
  [
    'patterns that a style sheet paints with',
    'many-elements',
    svg(
      `<style>@media print { .a, g > .b { fill: u\\72l(#p) } }</style><pattern id="p">${many(1_000, () => '<path/>')}</pattern>${many(1_000, () => '<path class="x b"/>')}`,
    ),
  ],
  [
    'masks within masks',
    'many-elements',
    svg(
      `${doubled(
        24,
        (at) => `<mask id="m${at}"><rect mask="url(#m${at - 1})"/><rect mask="url(#m${at - 1})"/></mask>`,
      )}<rect mask="url(#m24)"/>`,
    ),
  ],
  [
    'markers on each of 100,000 points',
    'many-elements',
    svg(
      `<marker id="m">${many(20, () => '<path/>')}</marker><path marker-mid="url(#m)" d="M0 0${many(100_000, () => ' 1 1')}"/>`,
    ),
  ],
  [
    'a path of 20 MB, drawn twice',
    'many-elements',
    svg(`<path id="p" d="M${'0 1 '.repeat(2_600_000)}"/><use href="#p"/>`),
  ],
  [
    'a chain of filters',
    'many-filters',
    svg(`<filter id="f">${blur.repeat(60)}</filter><rect filter="url(#f)"/>`),
  ],
  [
    'a filter whose every step takes the last twice',
    'many-filters',
    svg(
      `<filter id="f"><feOffset result="r0"/>${doubled(20, (at) => `<feBlend in="r${at - 1}" in2="r${at - 1}" result="r${at}"/>`)}</filter><rect filter="url(#f)"/>`,
    ),
  ],
  [
    'merges of what was merged',
    'many-filters',
    svg(
      `<filter id="f"><feOffset/>${doubled(20, () => '<feMerge><feMergeNode/><feMergeNode/></feMerge>')}</filter><rect filter="url(#f)"/>`,
    ),
  ],
  [
    'turbulence in 200 octaves',
    'many-filters',
    svg(
      '<filter id="f"><feTurbulence baseFrequency="0.05" numOctaves="200"/></filter><rect filter="url(#f)"/>',
    ),
  ],
  [
    'a convolution of 50 by 50',
    'many-filters',
    svg('<filter id="f"><feConvolveMatrix order="50"/></filter><rect filter="url(#f)"/>'),
  ],
  [
    'a blurred group, used a hundred times',
    'many-filters',
    svg(
      `<filter id="f">${blur}</filter><g id="g"><rect filter="url(#f)"/></g>${'<use href="#g"/>'.repeat(100)}`,
    ),
  ],
  ['filter functions of a style', 'many-filters', svg(many(60, () => '<rect style="filter: blur(9px)"/>'))],
  [
    'filters that a style sheet gives to all',
    'many-filters',
    svg(
      `<style><![CDATA[ /* all */ path:not(.a) { filter: blur(2px) drop-shadow(1px 1px) } ]]></style>${many(60, () => '<path/>')}`,
    ),
  ],
  ['groups within groups, 100,000 deep', 'nested', `<svg viewBox="0 0 1 1">${'<g>'.repeat(100_000)}`],
  [
    'a chain of 1,000 uses',
    'nested',
    svg(many(1_000, (at) => `<g id="g${at}"><use href="#g${at + 1}"/></g>`)),
  ],
  ['a group that uses itself', 'nested', svg('<g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g>')],
  [
    'entities made of entities',
    'indirect',
    `<!DOCTYPE svg [<!ENTITY a "<path/>"><!ENTITY b "&a;&a;">]>${svg('&b;')}`,
  ],
  [
    'entities that stand for much',
    'indirect',
    `<!DOCTYPE svg [<!ENTITY a "${'x'.repeat(100_000)}">]>${svg(`<path d="${'&a;'.repeat(1_000)}"/>`)}`,
  ],
  ['parameter entities', 'indirect', `<!DOCTYPE svg [<!ENTITY % a "x"> %a;]>${svg('')}`],
  ['an SVG within', 'indirect', svg('<image href="data:image/svg+xml,%3Csvg/%3E"/>')],
  ['a sheet of its own', 'indirect', `<?xml-stylesheet href="data:text/css,*{}"?>${svg('')}`],
  [
    'a property of its own that names a part',
    'indirect',
    svg('<rect style="--paint: url(#p); fill: var(--paint)"/>'),
  ],
];

/** A start tag over and over before one ends: 2 MB. */
export const startsWithoutEnd = '<svg '.repeat(400_000);

/** What drawing programs write, as far as it is more than shapes. */
export const ordinary: readonly (readonly [name: string, text: string])[] = [
  [
    'plain entities and a document type',
    `<?xml version="1.0"?><!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd" [<!ENTITY ns_svg "http://www.w3.org/2000/svg">]><svg xmlns="&ns_svg;" viewBox="0 0 9 9"><path d="M0 0h9"/></svg>`,
  ],
  [
    '10,000 shapes in a gradient',
    svg(
      `<linearGradient id="l"><stop/><stop/></linearGradient><linearGradient id="k" href="#l"/><style>.st0{fill:url(#k);}</style>${many(10_000, () => '<path class="st0" d="M0 0h9v9z"/>')}`,
    ),
  ],
  ['a traced outline of 2 MB', svg(`<path d="M0 0${' 10.5 20.25'.repeat(200_000)}"/>`)],
  [
    'a shadow behind each of 20 letters',
    svg(`<filter id="s"><feDropShadow dx="1" dy="1"/></filter>${many(20, () => '<path filter="url(#s)"/>')}`),
  ],
  [
    'a symbol used 1,000 times',
    svg(`<symbol id="s">${many(20, () => '<path/>')}</symbol>${'<use href="#s"/>'.repeat(1_000)}`),
  ],
  [
    'a clipped picture with its own bytes',
    svg(
      `<clipPath id="c"><rect/></clipPath><g clip-path="url(#c)"><image href="data:image/png;base64,${'A'.repeat(4_000_000)}"/></g>`,
    ),
  ],
  [
    'metadata of 4 MB',
    svg(`<metadata>${'<i>text</i>'.repeat(1_000)}${'x'.repeat(4_000_000)}</metadata><path/>`),
  ],
];
