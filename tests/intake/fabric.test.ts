import { describe, expect, it } from 'vitest';
import { readTable } from '../../src/intake';
import { readFabric } from '../../src/intake/fabric';
import { today } from './today';

describe('a fabric in a table', () => {
  it.each([
    ['cotton', 'cotton'],
    ['100% Cotton', 'cotton'],
    ['Algodón peinado', 'cotton'],
    ['50/50', 'blend'],
    ['60 % algodón, 40 % poliéster', 'blend'],
    ['poly-cotton', 'blend'],
    ['cotton polyester blend', 'blend'],
    ['Mezcla', 'blend'],
    ['Poliéster', 'polyester'],
    ['100 % poly', 'polyester'],
    ['Nylon', 'nylon'],
    ['poliamida', 'nylon'],
    ['viscosa', 'rayon'],
    ['lona', 'canvas'],
    ['cotton canvas', 'cotton'],
    ['piel', 'leather'],
    ['95% cotton, 5% elastane', 'elastane'],
    ['algodón y elastano', 'elastane'],
    ['acrílico', 'acrylic'],
    ['Non-woven PP', 'non-woven'],
    ['polipropileno no tejido', 'non-woven'],
    ['coated nylon shell', 'shell'],
    ['other', 'other'],
    ['Otra cosa', 'other'],
  ] as const)('“%s” is %s', (text, fabric) => expect(readFabric(text)).toEqual({ ok: true, value: fabric }));

  it.each([
    ['50% polyester 25% cotton 25% rayon', 'polyester'],
    ['nylon and cotton', 'nylon'],
    ['canvas and leather', 'leather'],
  ] as const)('“%s” is pressed as the gentler: %s', (text, fabric) =>
    expect(readFabric(text)).toEqual({ ok: true, value: fabric }),
  );

  it.each(['', '  ', '-', '–', '?', 'unknown', 'N/A', 'sin indicar'])('“%s” tells none', (text) =>
    expect(readFabric(text)).toEqual({ ok: true, value: null }),
  );

  it('that is none is named with what stands there, and the other rows are taken', () => {
    const { rows, bad } = readTable(
      'Pedido\tTransfer\tAncho\tAlto\tTejido\nFeria\tStar\t80\t60\tpoliéster\nFeria\tSun\t80\t60\tgranite',
      { unit: 'mm', dateOrder: null, today },
    );
    expect(rows).toMatchObject([{ transfer: 'Star', fabric: 'polyester' }]);
    expect(bad).toEqual([{ line: 3, problems: [{ column: 'fabric', code: 'unreadable', text: 'granite' }] }]);
  });

  it('makes the same print another line, which repeats nothing', () => {
    const { rows } = readTable(
      'Order,Transfer,Width,Height,Material\nFair,Star,80,60,cotton\nFair,Star,80,60,polyester\nFair,Star,80,60,cotton',
      { unit: 'mm', dateOrder: null, today },
    );
    expect(rows.map(({ repeats }) => repeats?.line ?? null)).toEqual([null, null, 2]);
  });
});
