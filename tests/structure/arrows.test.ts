import { createRequire } from 'node:module';
import { dirname } from 'node:path/posix';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Planted, type Violation, violationsOf } from './cruise';
import { type Folder, foldersDrawn } from './floors';

const { forbidden }: { forbidden: { name: string }[] } = createRequire(import.meta.url)(
  '../../.dependency-cruiser.cjs',
);
const rules = forbidden.map(({ name }) => name);

const folders = foldersDrawn();
const pathOf = ({ house, name }: Folder): string => `${house}/${name}`;
const othersOf = (folder: Folder): Folder[] =>
  folders.filter((other) => other.house === folder.house && other !== folder);

const ruleOf = ({ house, height }: Folder): string => `${house}-floor-${height}-looks-down-only`;

/** The floors that are drawn, each with the rule that holds it. */
const drawn = [...new Set(folders.map(ruleOf))].map((rule) => ({
  rule,
  floor: folders.filter((folder) => ruleOf(folder) === rule),
}));

const GROUND = 'export const ground = 1;\n';
const importing = (...files: readonly string[]): string =>
  `${files.map((file, at) => `import { ground as ground${at} } from '${file}';`).join('\n')}\nexport const all = [${files
    .map((_, at) => `ground${at}`)
    .join(', ')}];\n`;

const houses = [...new Set(folders.map(({ house }) => house))];

/** Every folder of a house with something in it, something above all floors, and something that knows them all. */
const grounds: Planted = {
  ...Object.fromEntries(houses.map((house) => [`${house}/ground.ts`, GROUND])),
  ...Object.fromEntries(folders.map((folder) => [`${pathOf(folder)}/ground.ts`, GROUND])),
  'app/main.ts': importing(...folders.map((folder) => `../${pathOf(folder)}/ground`)),
};

/** What breaks each of the other rules, and the files it is said of. */
const plants: Readonly<Record<string, { said: readonly string[]; planted: Planted }>> = {
  'every-folder-stands-on-a-floor': {
    said: ['app/attic/bad.ts', 'src/attic/bad.ts', 'src/output/attic/bad.ts'],
    planted: {
      'app/attic/bad.ts': importing('../words/ground'),
      'src/attic/bad.ts': importing('../units/ground'),
      'src/output/attic/bad.ts': importing('../csv/ground'),
    },
  },
  'no-cycles': {
    said: ['app/log/a.ts'],
    planted: {
      'app/log/a.ts': "import { b } from './b';\nexport const a = () => b;\n",
      'app/log/b.ts': "import { a } from './a';\nexport const b = () => a;\n",
    },
  },
  'src-knows-no-app': {
    said: ['src/units/of-app.ts', 'src/units/of-react.ts'],
    planted: {
      'src/units/of-app.ts': importing('../../app/words/ground'),
      'src/units/of-react.ts': "import { useState } from 'react';\nexport const all = useState;\n",
    },
  },
  'app-knows-no-tests': {
    said: ['app/shell/bad.ts'],
    planted: { 'app/shell/bad.ts': importing('../../tests/ground'), 'tests/ground.ts': GROUND },
  },
  'storage-knows-the-model-only': {
    said: ['src/storage/bad.ts'],
    planted: { 'src/storage/bad.ts': importing('../packing/ground') },
  },
  'pure-code-knows-no-browser-code': {
    said: ['src/artwork/bad.ts', 'src/editing/bad.ts'],
    planted: {
      'src/artwork/bad.ts': importing('./browser/ground'),
      'src/artwork/browser/ground.ts': GROUND,
      'src/editing/bad.ts': importing('../storage/ground'),
    },
  },
  'no-orphans': { said: ['src/units/alone.ts'], planted: { 'src/units/alone.ts': GROUND } },
  'not-to-unresolvable': {
    said: ['src/units/lost.ts'],
    planted: { 'src/units/lost.ts': importing('./gone') },
  },
};

/** Storage is of the browser: it knows units and the model alone, and no pure code knows it. */
const isOfBrowser = (folder: Folder, other: Folder): boolean =>
  other.name === 'storage' || (folder.name === 'storage' && !['model', 'units'].includes(other.name));

describe('the structure check', () => {
  let found: Violation[];

  beforeAll(() => {
    found = violationsOf({
      ...grounds,
      ...Object.assign({}, ...Object.values(plants).map(({ planted }) => planted)),
      // Every arrow between two folders of a house, down, up and along, and to what lies above its floors.
      ...Object.fromEntries(
        folders.map((folder) => [
          `${pathOf(folder)}/arrows.ts`,
          importing('../ground', ...othersOf(folder).map(({ name }) => `../${name}/ground`)),
        ]),
      ),
    });
  }, 60_000);

  const saidBy = (rule: string) => found.filter((violation) => violation.rule === rule);

  it.each(rules.filter((rule) => !drawn.some((floor) => floor.rule === rule)))(
    'catches what is planted against %s',
    (rule) => {
      const files = saidBy(rule).map(({ from }) => from);
      expect(plants[rule]?.said.length).toBeGreaterThan(0);
      for (const file of plants[rule]?.said ?? []) expect(files).toContain(file);
    },
  );

  it.each(drawn)('catches every arrow that is planted against $rule', ({ rule, floor }) => {
    const caught = saidBy(rule)
      .filter(({ from }) => from.endsWith('/arrows.ts'))
      .map(({ from, to }) => `${dirname(from)} -> ${dirname(to)}`);
    const wrong = floor.flatMap((folder) => [
      `${pathOf(folder)} -> ${folder.house}`,
      ...othersOf(folder)
        .filter(({ height }) => height >= folder.height)
        .map((other) => `${pathOf(folder)} -> ${pathOf(other)}`),
    ]);
    expect(caught.toSorted()).toEqual(wrong.toSorted());
  });

  it('passes every arrow that goes down', () => {
    const violations = violationsOf({
      ...grounds,
      ...Object.fromEntries(
        folders.map((folder) => [
          `${pathOf(folder)}/down.ts`,
          importing(
            ...othersOf(folder)
              .filter((other) => other.height < folder.height && !isOfBrowser(folder, other))
              .map(({ name }) => `../${name}/ground`),
          ),
        ]),
      ),
    });
    // A folder on the ground looks down on nothing.
    expect(violations.filter(({ rule }) => rule !== 'no-orphans')).toEqual([]);
  }, 60_000);
});
