import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { contrast } from './contrast';

const APP = resolve(import.meta.dirname, '../../app');

/** Contrast of text with what lies under it, and of the edges of controls (WCAG 2.2, 1.4.3 and 1.4.11, level AA). */
const TEXT = 4.5;
const EDGE = 3;

const texts = ['ink', 'quiet', 'accent', 'care', 'error'];
const grounds = ['ground', 'surface', 'accent-soft', 'care-soft', 'error-soft', 'film', 'film-blank', 'line'];

interface Rule {
  readonly file: string;
  readonly selector: string;
  readonly colour: string | undefined;
  readonly background: string | undefined;
}

const css = (file: string) => readFileSync(join(APP, file), 'utf8').replace(/\/\*[\s\S]*?\*\//g, '');

/** The rules that set a colour of text or of what lies under it. */
const rules: readonly Rule[] = readdirSync(APP, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.css'))
  .sort()
  .flatMap((file) =>
    [...css(file).matchAll(/([^{}]+)\{([^{}]*)\}/g)].map(([, selector = '', body = '']) => ({
      file,
      selector: selector.trim().replace(/\s+/g, ' '),
      colour: /(?:^|[;\s])color:\s*([^;]+)/.exec(body)?.[1],
      background: /(?:^|[;\s])background(?:-color)?:\s*([^;]+)/.exec(body)?.[1],
    })),
  )
  .filter(({ colour, background }) => colour !== undefined || background !== undefined);

/** The tokens of a scheme; dark ones lie over the light ones. */
function tokens(scheme: 'light' | 'dark'): Readonly<Record<string, string>> {
  const base = css('shell/base.css');
  const read = (text: string) =>
    Object.fromEntries(
      [...text.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})/g)].map(([, name = '', hex = '']) => [name, hex]),
    );
  const [light = '', ...media] = base.split('@media');
  const dark = media.find((text) => text.includes('prefers-color-scheme: dark')) ?? '';
  return scheme === 'light' ? read(light) : { ...read(light), ...read(dark) };
}

const isToken = (value: string | undefined, names: readonly string[]): boolean =>
  names.some((name) => value === `var(--${name})`);

/** A colour as `#rrggbb`; `null` for one that is no plain colour. */
function plain(value: string, of: Readonly<Record<string, string>>): string | null {
  const name = /^var\(--([\w-]+)\)$/.exec(value)?.[1];
  const hex = name === undefined ? value : (of[name] ?? '');
  if (/^#[0-9a-f]{6}$/.test(hex)) return hex;
  return /^#[0-9a-f]{3}$/.test(hex) ? `#${[...hex.slice(1)].map((digit) => digit + digit).join('')}` : null;
}

describe.each(['light', 'dark'] as const)('in the %s scheme', (scheme) => {
  const own = tokens(scheme);

  it.each(texts.flatMap((text) => grounds.map((ground) => [text, ground] as const)))(
    'text of --%s is readable on --%s',
    (text, ground) => {
      expect(contrast(own[text] ?? '', own[ground] ?? '')).toBeGreaterThanOrEqual(TEXT);
    },
  );

  it('text on the accent is readable, and edges of controls are seen', () => {
    expect(contrast(own['on-accent'] ?? '', own.accent ?? '')).toBeGreaterThanOrEqual(TEXT);
    for (const ground of ['ground', 'surface'])
      expect(contrast(own['strong-line'] ?? '', own[ground] ?? '')).toBeGreaterThanOrEqual(EDGE);
  });

  it('text is readable where a rule sets both colours', () => {
    // A box that is not ticked hides its tick.
    const shown = rules.filter(({ selector }) => selector !== '.checkbox .box');
    const pairs = shown.flatMap(({ file, selector, colour, background }) => {
      const [over, under] = [plain(colour ?? '', own), plain(background ?? '', own)];
      return over && under ? [{ rule: `${file} ${selector}`, ratio: contrast(over, under) }] : [];
    });
    expect(pairs.length).toBeGreaterThan(5);
    expect(pairs.filter(({ ratio }) => ratio < TEXT)).toEqual([]);
  });
});

describe('the styles', () => {
  /** What takes its colour from around it, or shows nothing. */
  // `Canvas` is the system's own ground, under its own text (CSS Color 4, system colours).
  const NEUTRAL = ['inherit', 'transparent', 'none', 'currentColor', 'Canvas'];
  /** What bears the tints of orders, which `tints.test.ts` holds against white; paper; bars, boxes and frames, which bear no text. */
  const APART = [
    ...['.order-head .order-code input', '.code'],
    ...['.sheet', '.sheets', '.cards-paper', 'html, body, main'],
    ...[
      '.cost-bar span',
      '.progress .fill',
      '.image-progress .fill',
      '.selection-frame',
      '.camera',
      '.overlay',
    ],
    ...['.checkbox .box', '.checkbox[data-selected] .box'],
    ...['.notice::before', '.notice.tone-care::before', '.notice.tone-error::before', '.caution::before'],
    '.grade.good b, .grade.meant b',
  ];

  it('name nothing apart that is not there', () => {
    const selectors = rules.map(({ selector }) => selector);
    expect(APART.filter((each) => !selectors.includes(each))).toEqual([]);
  });

  it('take the colour of text from the tokens, or say what lies under it', () => {
    const strange = rules.filter(
      ({ selector, colour, background }) =>
        colour !== undefined &&
        !isToken(colour, texts) &&
        !NEUTRAL.includes(colour) &&
        !APART.includes(selector) &&
        (plain(colour, tokens('light')) === null || plain(background ?? '', tokens('light')) === null),
    );
    expect(strange.map(({ file, selector, colour }) => `${file} ${selector}: ${colour}`)).toEqual([]);
  });

  it('take what lies under text from the tokens', () => {
    const strange = rules.filter(
      ({ selector, colour, background }) =>
        background !== undefined &&
        colour === undefined &&
        !isToken(background, grounds) &&
        !NEUTRAL.includes(background) &&
        !APART.includes(selector),
    );
    expect(strange.map(({ file, selector, background }) => `${file} ${selector}: ${background}`)).toEqual([]);
  });
});
