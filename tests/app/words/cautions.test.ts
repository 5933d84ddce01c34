import { describe, expect, it } from 'vitest';
import { en } from '../../../app/words/en';
import { es } from '../../../app/words/es';

/** What each act must say: nitrile is for fluids and melts at a press, which wants gloves that do not. */
const needs = {
  print: {
    en: [/nitrile gloves/i, /safety data sheets/],
    es: [/guantes de nitrilo/i, /fichas de seguridad/],
  },
  'cut-off': { en: [/print head/], es: [/cabezal/] },
  apart: { en: [/sharp/], es: [/cortan/] },
  powder: { en: [/N95 or FFP2/, /extraction/], es: [/N95 o FFP2/, /extracción/] },
  'cure-press': {
    en: [/platen/, /heat-resistant/i, /extract/i],
    es: [/placa/i, /resistentes al calor/, /extracción/i],
  },
  'cure-oven': { en: [/heat-resistant/, /extract/i], es: [/resistentes al calor/, /extracción/i] },
  line: { en: [/hands/, /N95 or FFP2/, /extraction/i], es: [/manos/, /N95 o FFP2/, /extracción/i] },
  press: { en: [/heat-resistant/, /extraction/i], es: [/resistentes al calor/, /extracción/i] },
  again: { en: [/second press/i, /heat-resistant/], es: [/segundo planchado/i, /resistentes al calor/] },
} satisfies Record<keyof typeof en.press.cautions, { en: RegExp[]; es: RegExp[] }>;

const languages = { en, es };

describe.each(['en', 'es'] as const)('cautions in %s', (language) => {
  const { cautions, dust } = languages[language].press;
  const acts = Object.keys(needs) as (keyof typeof needs)[];

  it.each(acts)('say what helps at %s', (act) => {
    for (const need of needs[act][language]) expect(cautions[act]).toMatch(need);
  });

  it('are in words of their own for each act', () => {
    expect(new Set(Object.values(cautions)).size).toBe(acts.length);
  });

  it('know of no platen in an oven or on a line, and of no nitrile at anything hot', () => {
    for (const act of ['cure-oven', 'line'] as const) expect(cautions[act]).not.toMatch(/platen|placa/i);
    for (const act of ['cure-press', 'cure-oven', 'line', 'press', 'again'] as const)
      expect(cautions[act]).not.toMatch(/nitril/i);
  });

  it('send nobody to an open window for air', () => {
    for (const caution of Object.values(cautions))
      expect(caution).not.toMatch(/^(open a window|hay que abrir)/i);
  });

  // 29 CFR 1910.1000, Table Z-1, particulates not otherwise regulated: total dust 15 mg/m3, respirable fraction 5 mg/m3.
  it('tell the limits of nuisance dust as the table has them', () => {
    expect(dust).toMatch(/15 mg\/m³.*5 mg\/m³/);
    expect(dust).toMatch(/29 CFR 1910\.1000/);
    expect(dust).toMatch(/Z-1/);
  });
});
