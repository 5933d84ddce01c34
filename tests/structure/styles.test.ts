import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from './cruise';
import { farReaching, unstyled } from './styles';

const SHARED = ['app/shell', 'app/parts', 'app/panels'];

/** The files of app with one of some endings, by their paths. */
function textsOf(ending: RegExp): Record<string, string> {
  const files = readdirSync(join(ROOT, 'app'), { recursive: true, encoding: 'utf8' })
    .filter((file) => ending.test(file))
    .map((file) => `app/${file.replaceAll(sep, '/')}`);
  return Object.fromEntries(files.map((file) => [file, readFileSync(join(ROOT, file), 'utf8')]));
}

describe('the stylesheet of a room', () => {
  it('reaches no other room', () => {
    const texts = textsOf(/\.(css|tsx)$/);
    const files = Object.keys(texts);
    expect(files.filter((file) => file.endsWith('.css')).length).toBeGreaterThan(20);
    expect(farReaching(texts, SHARED)).toEqual([]);
  });

  it.each<{ name: string; files: Record<string, string>; found: string[] }>([
    {
      name: 'a class that another room uses',
      files: {
        'app/press/press.css': '.chart, .lane { margin: 0 }',
        'app/pricing/Chart.tsx': "const chart = <p className={wide ? 'chart wide' : `chart`} />;",
      },
      found: ['app/press/press.css: .chart'],
    },
    {
      name: 'a class that every room has its looks of',
      files: {
        'app/parts/chart.css': '.chart svg { width: 100% }',
        'app/press/press.css': '@media (max-width: 9px) { .chart svg { width: 9px } }',
      },
      found: ['app/press/press.css: .chart svg'],
    },
    {
      name: 'elements of all rooms',
      files: { 'app/film/film.css': ':is(h2, h3):not(:hover) { margin: 0 }' },
      found: ['app/film/film.css: :is(h2, h3):not(:hover)'],
    },
    {
      name: 'none that a class of its own keeps within the room',
      files: {
        'app/film/film.css': '/* .button */ .film-bar .button, .film-bar.button { margin: 0.5px }',
        'app/film/canvas/Bar.tsx': 'const bar = <p className="film-bar" />;',
        'app/log/Log.tsx': 'const act = <p className="button" title="film-bar" />;',
      },
      found: [],
    },
  ])('is found out: $name', ({ files, found }) => {
    expect(farReaching(files, SHARED)).toEqual(found);
  });
});

describe('a room or a window', () => {
  it('brings along the stylesheets that it is shown by', () => {
    expect(unstyled(textsOf(/\.(css|tsx|ts)$/), 'app/main.tsx')).toEqual([]);
  });

  it.each([
    ['import { List } from "./List";', []],
    ["import { List } from './List';", ['app/upkeep/CheckDialog.tsx: app/upkeep/upkeep.css']],
    ["import { List } from './List';\nimport './upkeep.css';", []],
    ["const fetch = () => import('./List');", []],
  ])('that does not is found out: %s', (text, found) => {
    const files = {
      'app/main.tsx': "import './shell/base.css';",
      'app/shell/base.css': '.quiet { color: gray }',
      'app/upkeep/CheckDialog.tsx': text,
      'app/upkeep/List.tsx': 'export const List = () => <ul className="check-list quiet" />;',
      'app/upkeep/upkeep.css': '.check-list li { display: flex }',
    };
    expect(unstyled(files, 'app/main.tsx')).toEqual(found);
  });
});
