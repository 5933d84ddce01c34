import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from './cruise';
import { farReaching } from './styles';

const SHARED = ['app/shell', 'app/parts', 'app/panels'];

describe('the stylesheet of a room', () => {
  it('reaches no other room', () => {
    const files = readdirSync(join(ROOT, 'app'), { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.(css|tsx)$/.test(file))
      .map((file) => `app/${file.replaceAll(sep, '/')}`);
    const texts = Object.fromEntries(files.map((file) => [file, readFileSync(join(ROOT, file), 'utf8')]));
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
