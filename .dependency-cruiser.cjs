/** The arrows between folders; `tests/structure.test.ts` plants a forbidden import and sees it caught. */
const outside = (...folders) => `^src/(?!(${folders.join('|')})/)`;

module.exports = {
  forbidden: [
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
      name: 'units-stand-on-the-ground',
      severity: 'error',
      from: { path: '^src/units' },
      to: { path: outside('units') },
    },
    {
      name: 'workers-stand-on-the-ground',
      severity: 'error',
      from: { path: '^src/workers' },
      to: { path: outside('workers') },
    },
    {
      name: 'model-knows-units-only',
      severity: 'error',
      from: { path: '^src/model' },
      to: { path: outside('units', 'model') },
    },
    {
      name: 'packing-knows-units-only',
      comment: 'The engine knows nothing of images, money, storage or orders.',
      severity: 'error',
      from: { path: '^src/packing' },
      to: { path: outside('units', 'workers', 'packing') },
    },
    {
      name: 'storage-knows-the-model-only',
      severity: 'error',
      from: { path: '^src/storage' },
      to: { path: outside('units', 'model', 'storage') },
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
