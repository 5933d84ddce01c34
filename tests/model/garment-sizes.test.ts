import { describe, expect, it } from 'vitest';
import { groupOf, type SizeGroup, sizeKey, widestFor } from '../../src/model';

const group = (style: string, size: string): SizeGroup => groupOf({ style, size });

describe('the group of a garment', () => {
  // Body heights of EN 13402-3 from memory: infants to 104 cm, children from 110 to 164, every 6.
  it.each(Array.from({ length: 19 }, (_, step) => 56 + 6 * step))('by a body height of %d cm', (height) => {
    const expected = height <= 104 ? 'toddler' : 'youth';
    expect(group('T-shirt', String(height))).toBe(expected);
    expect(group('T-shirt', `${height} cm`)).toBe(expected);
    expect(group('T-shirt', `${height - 6}/${height}`)).toBe(expected);
  });

  // US children's sizes, ASTM D5826 (2 to 6X) and D6192 (7 to 16) from memory; boys' go on to 20.
  it.each(['4', '5', '6', '6X', '6x', '7', '8', '10', '12', '14', '16', '18', '20', 'US 10'])(
    'by the US number %s: youth',
    (size) => expect(group('T-shirt', size)).toBe('youth'),
  );

  it.each([
    '2T',
    '3T',
    '4T',
    '5T',
    '2 T',
    '2',
    '3',
    'NB',
    '6M',
    '12-18M',
    '18 months',
    '24 meses',
    '2-3',
    '3-4',
    '3 años',
  ])('by %s: toddler', (size) => expect(group('T-shirt', size)).toBe('toddler'));

  it.each(['YM', 'Y XL', 'Youth L', 'y8', '5-6', '7/8', '10-12', '8 años', '9 yrs', 'Niño M'])(
    'by %s: youth',
    (size) => expect(group('T-shirt', size)).toBe('youth'),
  );

  it.each(['S', 'M', 'XL', '2XL', '2X', '3X', 'XS', '38', '42', '46', '1', 'one size', ''])(
    'by %s: adult',
    (size) => expect(group('T-shirt', size)).toBe('adult'),
  );

  it.each([
    ['Youth tee', 'M', 'youth'],
    ['Camiseta de niño', 'M', 'youth'],
    ['Camiseta infantil', 'L', 'youth'],
    ['Kids hoodie', '2T', 'toddler'],
    ['Girls’ leggings', 'S', 'youth'],
    ['Toddler tee', 'L', 'toddler'],
    ['Body de bebé', 'M', 'toddler'],
    ['Baby bodysuit', '62', 'toddler'],
    ['Women’s tee', '12', 'adult'],
    ['Camiseta de mujer', '14', 'adult'],
    ['Men’s jacket', '56', 'adult'],
    ['Tee', 'Youth M', 'youth'],
  ] as const)('of %s in %s is %s', (style, size, expected) => expect(group(style, size)).toBe(expected));

  it('tells a child’s M from an adult’s, in what it may be printed with too', () => {
    const [child, adult] = [
      { style: 'Youth tee', size: 'M' },
      { style: 'Tee', size: 'M' },
    ];
    expect(sizeKey(child)).not.toBe(sizeKey(adult));
    expect(widestFor(child)).toBeLessThan(widestFor(adult));
  });

  it.each([
    ['92', '104'],
    ['2T', '4T'],
    ['116', '152'],
    ['5', '14'],
    ['YS', 'YL'],
    ['S', 'L'],
  ])('takes less on %s than on %s', (small, large) =>
    expect(widestFor({ style: '', size: small })).toBeLessThan(widestFor({ style: '', size: large })),
  );
});
