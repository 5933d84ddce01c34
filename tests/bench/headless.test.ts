import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { headless } from './headless';
import type { Instance } from './instance';
import type { Result } from './result';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'rollwright-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

const day: Instance = {
  name: 'two transfers',
  film: { kind: 'roll', width: 330 },
  margins: { left: 5, right: 5, lead: 10, tail: 10 },
  gap: 6,
  spanMax: 400,
  pieces: [
    { id: 'chest', width: 86.2, length: 74.9, count: 7, turn: 'quarter' },
    { id: 'back', width: 250, length: 180.4, count: 2, turn: 'fixed' },
  ],
};

function instanceFile(instance: unknown): string {
  const file = join(folder, 'instance.json');
  writeFileSync(file, typeof instance === 'string' ? instance : JSON.stringify(instance));
  return file;
}

/** Runs the command as the scripts of package.json do. */
const command = (instance: unknown, ...args: string[]) =>
  spawnSync('npm', ['run', '--silent', 'headless', '--', instanceFile(instance), ...args], {
    encoding: 'utf8',
  });

describe('the headless planner', () => {
  it('prints one result and nothing else', () => {
    const { status, stdout, stderr } = command(day, '--seconds', '0.2', '--seed', '3');
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    const result: Result = JSON.parse(stdout);
    expect(result.name).toBe('two transfers');
    expect(result.placements).toHaveLength(9);
    expect(result.placements.filter(({ piece }) => piece === 'chest').map(({ copy }) => copy)).toEqual([
      1, 2, 3, 4, 5, 6, 7,
    ]);
    expect(result.leastLength).toBeLessThanOrEqual(result.lengthUsed ?? 0);
    expect(result.spans.at(-1)?.to).toBe(result.lengthUsed);
  });

  it('lays out outlines on no more film than their boxes take', () => {
    // Two triangles make a square; as boxes they take twice its length.
    const triangle = [
      [0, 0],
      [100, 0],
      [0, 100],
    ];
    const outlines = {
      ...day,
      film: { kind: 'roll', width: 120 },
      spanMax: null,
      pieces: [{ id: 'half', count: 4, rotations: [0, 180], outline: [triangle] }],
    };
    const result = headless([instanceFile(outlines), '--seconds', '0.3']);
    expect(result.placements).toHaveLength(4);
    expect(result.lengthUsed).toBeLessThan(10 + 4 * 100 + 3 * 6 + 10);
    expect(result.leastLength).toBeLessThanOrEqual(result.lengthUsed ?? 0);
  });

  it('lays out published outlines, which have no gap and units of their own', () => {
    const square = [
      [0, 0],
      [2, 0],
      [2, 2],
      [0, 2],
    ];
    const strip = {
      name: 'squares',
      width: 6,
      pieces: [{ id: 'a', count: 9, rotations: [0, 180], polygon: square }],
    };
    expect(headless([instanceFile(strip), '--seconds', '0.1']).lengthUsed).toBeCloseTo(6, 3);
  });

  it('tells what it refuses in one sentence, with code 2', () => {
    const { status, stdout, stderr } = command('{"name":', '--seconds', '1');
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toMatch(/not JSON/);
    expect(stderr.trim().split('\n')).toHaveLength(1);
  });

  it('counts sheets on sheets', () => {
    const sheets = { ...day, film: { kind: 'sheet', width: 330, length: 483 }, spanMax: null };
    expect(headless([instanceFile(sheets), '--seconds', '0.1'])).toMatchObject({
      lengthUsed: null,
      leastSheets: 2,
      sheetsUsed: 2,
      spans: [],
    });
  });

  it.each([
    ['another shape', { ...day, film: { kind: 'roll' } }, /film\.width/],
    ['a count of none', { ...day, pieces: [{ ...day.pieces[0], count: 0 }] }, /pieces\.0\.count/],
    ['a size of zero', { ...day, pieces: [{ ...day.pieces[0], width: 0 }] }, /pieces\.0\.width/],
    ['a piece too wide', { ...day, pieces: [{ ...day.pieces[1], width: 331 }] }, /back is wider/],
    [
      'an outline of two corners',
      {
        ...day,
        pieces: [
          {
            ...day.pieces[0],
            rotations: [0],
            outline: [
              [
                [0, 0],
                [1, 1],
              ],
            ],
          },
        ],
      },
      /pieces\.0\.outline\.0/,
    ],
    [
      'a piece too long for a span',
      { ...day, pieces: [{ ...day.pieces[1], length: 500 }] },
      /back is longer/,
    ],
  ])('refuses %s in one sentence', (_, instance, sentence) => {
    const refused = () => headless([instanceFile(instance), '--seconds', '1']);
    expect(refused).toThrow(sentence);
    expect(refused).toThrow(/^[^\n]+$/);
  });

  it.each([
    ['no seconds', [], /--seconds takes a number/],
    ['a seed of letters', ['--seconds', '1', '--seed', 'x'], /--seed takes a whole number/],
    ['two instances', ['other.json', '--seconds', '1'], /^Use: npm run/],
  ])('says how it is used: %s', (_, args, sentence) => {
    expect(() => headless([instanceFile(day), ...args])).toThrow(sentence);
  });
});
