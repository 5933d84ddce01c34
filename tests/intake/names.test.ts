import { describe, expect, it } from 'vitest';
import { readNames, readTable } from '../../src/intake';
import { today } from './today';

describe('names and numbers', () => {
  it('are read in any order of the three, with a heading or without', () => {
    const { rows, bad } = readNames('Name,Number,Size\nFinn,7,L\n12;\nYM,Ada,#23\nMarlow,,XL');
    expect(bad).toEqual([]);
    expect(rows.map(({ name, number, size }) => [name, number, size])).toEqual([
      ['Finn', '7', 'L'],
      ['12;', '', ''],
      ['Ada', '23', 'YM'],
      ['Marlow', '', 'XL'],
    ]);
  });

  it('are read under a Spanish heading', () => {
    expect(readNames('Nombre;Número;Talla\nFinn;7;L').rows).toMatchObject([
      { name: 'Finn', number: '7', size: 'L' },
    ]);
  });

  it('with neither name nor number are named by their line', () => {
    expect(readNames('Finn\t7\tL\n\t\tXL')).toMatchObject({ rows: [{ name: 'Finn' }], bad: [2] });
  });
});

describe('a heading the shop has mapped', () => {
  const text = 'Klant,Motief,Breed,Hoog,Stuks\nFair,Star,50 mm,40 mm,3';
  const ways = { unit: 'mm', dateOrder: null, today } as const;

  it('is asked about, and understood once it was said', () => {
    expect(readTable(text, ways)).toMatchObject({
      rows: [],
      headings: ['Klant', 'Motief', 'Breed', 'Hoog', 'Stuks'].map((text) => ({ text, column: null })),
      problem: { code: 'missing-columns' },
    });
    const columns = { klant: 'order', motief: 'transfer', breed: 'width', hoog: 'height', stuks: 'count' };
    expect(readTable(text, { ...ways, mapped: { tables: {}, columns } })).toMatchObject({
      rows: [{ order: 'Fair', transfer: 'Star', width: 50_000, height: 40_000, count: 3 }],
      headings: [
        { text: 'Klant', column: 'order' },
        { text: 'Motief', column: 'transfer' },
        { text: 'Breed', column: 'width' },
        { text: 'Hoog', column: 'height' },
        { text: 'Stuks', column: 'count' },
      ],
      problem: null,
    });
  });
});
