import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tickJobs, unlockRun } from '../../src/editing';
import {
  type Collected,
  codesOf,
  collect,
  handOverRun,
  MOST_CODES,
  missing,
  readHandOver,
  wholeOf,
  writeHandOver,
} from '../../src/hand-over';
import { fromBase45, toBase45 } from '../../src/hand-over/base45';
import { fromColumns, toColumns } from '../../src/hand-over/columns';
import { seal, unseal } from '../../src/hand-over/sealed';
import { edited, freshIds, NOW } from '../editing/book';
import { hash, locked, run, uuids } from './shop';

const bytesOf = (text: string) => new TextEncoder().encode(text);

describe('base 45', () => {
  it.each([
    ['AB', 'BB8'],
    ['Hello!!', '%69 VD92EX0'],
    ['base-45', 'UJCLQE7W581'],
    ['ietf!', 'QED8WEX0'],
  ])('writes %s as RFC 9285 does: %s', (text, written) => {
    expect(toBase45(bytesOf(text))).toBe(written);
    expect(fromBase45(written)).toEqual(bytesOf(text));
  });

  it.each(['A', 'ab', 'GGW', ':::', '::'])('refuses %s, which it never writes (RFC 9285, 6)', (text) => {
    expect(fromBase45(text)).toBeNull();
  });

  it('brings back any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(fromBase45(toBase45(bytes))).toEqual(bytes);
      }),
    );
  });
});

describe('columns', () => {
  it('bring back any lists of records', () => {
    const list = fc.array(
      fc.oneof(
        { weight: 3, arbitrary: fc.record({ a: fc.nat(), b: fc.record({ c: fc.option(fc.string()) }) }) },
        fc.record({ a: fc.nat() }),
        fc.constant(null),
      ),
    );
    fc.assert(
      fc.property(fc.record({ list, lists: fc.array(list), name: fc.string() }), (value) => {
        expect(fromColumns(toColumns(value))).toEqual(value);
      }),
    );
  });
});

describe('a sealed text', () => {
  const id = '0f8fad5b-d9cb-469f-a165-70867728950e';

  it('comes back, whatever it says and however often ids are in it', async () => {
    const text = fc.array(fc.oneof(fc.string(), fc.uuid({ version: 4 }), fc.constant(id)), { maxLength: 20 });
    await fc.assert(
      fc.asyncProperty(text, async (parts) => {
        const json = JSON.stringify(parts);
        expect(await unseal(await seal(json, hash), hash)).toEqual({ ok: true, value: json });
      }),
    );
  });

  it('takes 16 bytes for a random id and few for it again', async () => {
    const once = (await seal(JSON.stringify([id]), hash)).length;
    const often = (await seal(JSON.stringify(Array.from({ length: 50 }, () => id)), hash)).length;
    expect(often - once).toBeLessThan(50);
  });

  it('is refused with any bit of it turned over, cut short or drawn out', async () => {
    const sealed = await seal(JSON.stringify({ id, list: [1, 2, 3] }), hash);
    for (let bit = 0; bit < 8 * sealed.length; bit += 1) {
      const other = sealed.slice();
      other[bit >> 3] = (other[bit >> 3] ?? 0) ^ (1 << (bit & 7));
      expect((await unseal(other, hash)).ok, `bit ${bit}`).toBe(false);
    }
    for (const length of [0, 3, 20, sealed.length - 1]) {
      expect((await unseal(sealed.slice(0, length), hash)).ok).toBe(false);
    }
    expect((await unseal(Uint8Array.from([...sealed, 0]), hash)).ok).toBe(false);
  });

  it('says what is wrong: none of ours, or a newer one', async () => {
    expect(await unseal(bytesOf('order,transfer'), hash)).toEqual({ ok: false, problem: 'not-hand-over' });
    const newer = await seal('{}', hash);
    newer[4] = 2;
    expect(await unseal(newer, hash)).toEqual({ ok: false, problem: 'newer' });
  });
});

describe('codes', () => {
  const sealedOf = (length: number) => {
    const bytes = Uint8Array.from({ length }, (_, at) => (at * 7919 + length) & 0xff);
    bytes.set(bytesOf('RwHo'));
    return bytes;
  };
  const gather = (texts: readonly string[]): Collected | null =>
    texts.reduce<Collected | null>((collected, text) => {
      const read = collect(collected, text);
      return read.ok ? read.value : collected;
    }, null);

  it('are at most twelve, of a size that phones read; what is larger is for a file', () => {
    for (const [length, count] of [
      [60, 1],
      [621, 2],
      [7440, 12],
      [7441, 8],
      [11_280, 12],
    ] as const) {
      const codes = codesOf(sealedOf(length));
      expect(codes).toHaveLength(count);
      // Version 25 with medium error correction holds 1,451 characters (ISO/IEC 18004, table 7).
      for (const code of codes ?? []) expect(code.length).toBeLessThanOrEqual(1451);
    }
    expect(codesOf(sealedOf(7440))?.every((code) => code.length <= 970)).toBe(true);
    expect(codesOf(sealedOf(11_281))).toBeNull();
    expect(MOST_CODES).toBe(12);
  });

  it('come together in any order, some of them twice', () => {
    const scans = fc.integer({ min: 60, max: 11_000 }).chain((length) => {
      const codes = codesOf(sealedOf(length)) ?? [];
      return fc.tuple(
        fc.constant(length),
        fc.shuffledSubarray(codes, { minLength: codes.length }),
        fc.subarray(codes),
      );
    });
    fc.assert(
      fc.property(scans, ([length, all, again]) => {
        const whole = gather([...again, ...all, ...again]);
        expect(whole && wholeOf(whole)).toEqual(sealedOf(length));
      }),
      { numRuns: 25 },
    );
  });

  it('are named while they are missing', () => {
    const codes = codesOf(sealedOf(3000)) ?? [];
    const some = fc.subarray(codes, { minLength: 1, maxLength: codes.length - 1 });
    fc.assert(
      fc.property(some, (read) => {
        const collected = gather(read);
        if (!collected) throw new Error('nothing was read');
        expect(wholeOf(collected)).toBeNull();
        expect(missing(collected)).toEqual(
          codes.flatMap((code, number) => (read.includes(code) ? [] : [number])),
        );
      }),
    );
  });

  it('of another hand-over, damaged ones and foreign ones change nothing (rule 17)', () => {
    const codes = codesOf(sealedOf(2000)) ?? [];
    const [first = '', second = ''] = codes;
    const before = gather([first]);
    if (!before) throw new Error('nothing was read');
    const [other = ''] = codesOf(sealedOf(1900)) ?? [];
    expect(collect(before, other)).toEqual({ ok: false, problem: 'other' });
    expect(collect(before, 'https://example.org')).toEqual({ ok: false, problem: 'not-code' });
    expect(collect(before, `RWHO2${second.slice(5)}`)).toEqual({ ok: false, problem: 'newer' });
    fc.assert(
      fc.property(fc.nat(second.length - 7), fc.constantFrom(...'0A$:'), (at, digit) => {
        const place = 6 + at;
        fc.pre(second.charAt(place) !== digit);
        const read = collect(before, second.slice(0, place) + digit + second.slice(place + 1));
        expect(read.ok).toBe(false);
      }),
    );
  });
});

describe('a hand-over', () => {
  const ticked = edited(locked, (draft) =>
    tickJobs(draft, run, ['print/0'], { done: true, by: '' }, uuids(900)),
  );
  const handOver = handOverRun(ticked, run, null, NOW);
  if (!handOver) throw new Error('not locked');

  it('comes back as it was written', async () => {
    expect(await readHandOver(await writeHandOver(handOver, hash), hash)).toEqual({
      ok: true,
      value: handOver,
    });
  });

  it('is none of a draft', () => {
    const draft = edited(locked, (book) => unlockRun(book, run, freshIds()));
    expect(handOverRun(draft, run, null, NOW)).toBeNull();
  });

  it.each([
    ['without its run', { records: { run: [], tick: [], spoilage: [] } }],
    ['with a record of another run', { run: 'other' }],
    ['with a record that is not whole', { records: { run: [], tick: [{ id: '1' }], spoilage: [] } }],
    ['without its records', { records: {} }],
    ['with columns of different lengths', { records: { '=': { a: [1, 2], b: [1] } } }],
    ['with another form', { format: 'something else' }],
  ])('is refused %s', async (_, changed) => {
    const json = await unseal(await writeHandOver(handOver, hash), hash);
    if (!json.ok) throw new Error('not sealed');
    const content = JSON.stringify({ ...JSON.parse(json.value), ...changed });
    expect(await readHandOver(await seal(content, hash), hash)).toEqual({ ok: false, problem: 'damaged' });
  });

  it('of a newer version is refused as such', async () => {
    const json = await unseal(await writeHandOver(handOver, hash), hash);
    if (!json.ok) throw new Error('not sealed');
    const content = JSON.stringify({ ...JSON.parse(json.value), model: 999 });
    expect(await readHandOver(await seal(content, hash), hash)).toEqual({ ok: false, problem: 'newer' });
  });
});
