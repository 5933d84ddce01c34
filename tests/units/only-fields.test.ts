import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { onlyFields } from '../../src/units';

interface Entry {
  readonly id: string;
  readonly due: number;
  readonly name: string;
}

const projected = (records: Readonly<Record<string, Entry>>) =>
  Object.fromEntries(Object.entries(records).map(([key, { id, due }]) => [key, { id, due }]));

describe('records cut down to some of their fields', () => {
  const a: Entry = { id: 'a', due: 1, name: 'Mill' };
  const b: Entry = { id: 'b', due: 2, name: 'Hill' };

  it('are the same while these fields are, and so is each record that keeps them', () => {
    const only = onlyFields<Entry, 'id' | 'due'>(['id', 'due']);
    const first = only({ a, b });
    expect(first).toEqual({ a: { id: 'a', due: 1 }, b: { id: 'b', due: 2 } });
    expect(only({ a: { ...a, name: 'Kiln' }, b: { ...b } })).toBe(first);
    const later = only({ a, b: { ...b, due: 3 } });
    expect(later).toEqual({ a: first.a, b: { id: 'b', due: 3 } });
    expect(later.a).toBe(first.a);
  });

  it.each([
    { what: 'one is gone', records: { a } },
    { what: 'one has come', records: { a, b, c: { ...a, id: 'c' } } },
    { what: 'one has taken the place of another', records: { a, c: b } },
    { what: 'they stand in another order', records: { b, a } },
    { what: 'a field has another sign', records: { a: { ...a, due: -0 }, b } },
  ])('are others where $what', ({ records }) => {
    const only = onlyFields<Entry, 'id' | 'due'>(['id', 'due']);
    const first = only({ a: records.a?.due === 0 ? { ...a, due: 0 } : a, b });
    const then = only(records);
    expect(then).not.toBe(first);
    expect(then).toEqual(projected(records));
    expect(Object.keys(then)).toEqual(Object.keys(records));
  });

  it('are those fields of what is asked for, whatever was asked for before', () => {
    const record = fc.record({ id: fc.constantFrom('x', 'y'), due: fc.nat({ max: 2 }), name: fc.string() });
    const books = fc.array(fc.dictionary(fc.constantFrom('a', 'b', 'c'), record), { maxLength: 8 });
    fc.assert(
      fc.property(books, (all) => {
        const only = onlyFields<Entry, 'id' | 'due'>(['id', 'due']);
        const found = all.map(only);
        expect(found).toEqual(all.map(projected));
        // One that is come back to is what it was.
        expect(all.map(only).map((each, at) => each === found[at])).toEqual(all.map(() => true));
      }),
    );
  });
});
