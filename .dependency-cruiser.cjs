/**
 * The arrows between folders. `tests/structure` reads the same floors from DEVELOPERS.md and plants a forbidden
 * import for each rule.
 */

/** The folders of a house from the ground up. Those of one floor do not know each other. */
const floors = {
  app: [
    ['words', 'files'],
    ['offline', 'recovery'],
    ['parts', 'store'],
    ['commands', 'panels', 'windows'],
    [
      'orders',
      'artwork',
      'film',
      'cut',
      'cut-map',
      'cut-file',
      'print-image',
      'press',
      'costs',
      'pricing',
      'stock',
      'log',
      'calibrate',
      'upkeep',
      'hand-over',
    ],
    ['shell'],
  ],
  src: [
    ['units', 'workers'],
    ['outlines'],
    ['packing', 'model', 'intake'],
    ['nesting'],
    ['planning'],
    ['layout', 'storage', 'artwork'],
    ['cutting', 'hand-over'],
    ['pressing'],
    ['costing'],
    ['stock', 'pricing'],
    ['upkeep'],
    ['editing', 'log'],
    ['output', 'demo'],
  ],
  'src/output': [
    ['deflate', 'pdf', 'paging', 'csv', 'backup', 'test-strip'],
    ['cut-map', 'cut-file', 'print-image'],
  ],
};

/** One rule a floor: a folder on it sees itself and the floors below. */
const looksDownOnly = ([house, upwards]) =>
  upwards.map((floor, height) => ({
    name: `${house}-floor-${height}-looks-down-only`,
    severity: 'error',
    from: { path: `^${house}/(${floor.join('|')})/` },
    to: {
      path: `^${house}/`,
      pathNot: `^${house}/(${['$1', ...upwards.slice(0, height).flat()].join('|')})/`,
    },
  }));

module.exports = {
  forbidden: [
    ...Object.entries(floors).flatMap(looksDownOnly),
    {
      name: 'every-folder-stands-on-a-floor',
      severity: 'error',
      from: {
        path: Object.entries(floors).map(([house, all]) => `^${house}/(?!(${all.flat().join('|')})/)[^/]+/`),
      },
      to: {},
    },
    {
      name: 'no-cycles',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'src-knows-no-app',
      comment: 'The core is whole without React.',
      severity: 'error',
      from: { path: '^src' },
      to: {
        path: '^(app|tests|e2e)|node_modules/(react|react-dom|zustand|konva|react-konva|react-aria-components)/',
      },
    },
    {
      name: 'app-knows-no-tests',
      severity: 'error',
      from: { path: '^app' },
      to: { path: '^(tests|e2e)' },
    },
    {
      name: 'storage-knows-the-model-only',
      severity: 'error',
      from: { path: '^src/storage' },
      to: { path: '^src/(?!(units|model|storage)/)' },
    },
    {
      name: 'pure-code-knows-no-browser-code',
      comment: 'Adapters import the core, never the other way.',
      severity: 'error',
      from: { path: '^src', pathNot: '/browser/|^src/storage/' },
      to: { path: '^src/.*/browser/|^src/storage/' },
    },
    {
      name: 'no-orphans',
      severity: 'error',
      from: { orphan: true, path: '^(src|app)', pathNot: '\\.d\\.ts$|\\.worker\\.ts$|tsconfig' },
      to: {},
    },
    {
      name: 'not-to-unresolvable',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'types', 'default'] },
  },
};
