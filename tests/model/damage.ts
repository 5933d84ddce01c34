import fc from 'fast-check';
import { afterAll } from 'vitest';

/** How many cases a test of damage looks at; the bench asks for more. */
export const CASES = Number(process.env.DAMAGE_CASES ?? 1_000);

/** Times reads, and tells the longest of them where the bench asks; it stands where tests are described. */
export function timer(what: string) {
  let [reads, longest] = [0, 0];
  afterAll(() => {
    if (process.env.DAMAGE_CASES)
      process.stdout.write(`${what}: ${reads} read, the longest in ${longest.toFixed(1)} ms\n`);
  });
  return <Value>(read: () => Value): Value => {
    const started = performance.now();
    const done = () => {
      reads += 1;
      longest = Math.max(longest, performance.now() - started);
    };
    const value = read();
    if (value instanceof Promise) void value.then(done, done);
    else done();
    return value;
  };
}

/** Bytes of which some are changed, cut out, doubled, or cut off. */
export const damagedBytes = (bytes: Uint8Array): fc.Arbitrary<Uint8Array<ArrayBuffer>> => {
  const place = fc.nat(Math.max(0, bytes.length - 1));
  return fc
    .record({
      changes: fc.array(fc.tuple(place, fc.nat(255)), { maxLength: 6 }),
      part: fc.option(fc.tuple(place, place, fc.nat(2)), { freq: 3 }),
      length: fc.oneof({ weight: 3, arbitrary: fc.constant(bytes.length) }, place),
    })
    .map(({ changes, part, length }) => {
      const copy = bytes.slice();
      for (const [at, value] of changes) copy[at] = value;
      if (!part) return new Uint8Array(copy.subarray(0, length));
      const [from, to, times] = [Math.min(part[0], part[1]), Math.max(part[0], part[1]), part[2]];
      const middle = Array.from({ length: times }, () => [...copy.subarray(from, to)]).flat();
      return Uint8Array.from([...copy.subarray(0, from), ...middle, ...copy.subarray(to)]);
    });
};

const evil = fc.constantFrom<unknown>(
  ...[null, '', 'x', '!!!', '2026-99-99', '__proto__', 'constructor', 0, -1, 0.5, 9e15, -9e15, 1e308],
  ...[true, [], {}, [null], { id: 'x' }],
);

/** The paths to all places within a value. */
function pathsOf(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  const within = typeof value === 'object' && value !== null ? Object.entries(value) : [];
  return [path, ...within.flatMap(([name, own]) => pathsOf(own, [...path, name]))];
}

/** A value with something else at the end of a path. */
function replaced(value: unknown, [name, ...rest]: readonly string[], by: unknown): unknown {
  if (name === undefined) return by;
  const own: Record<string, unknown> = Object(value);
  const next = replaced(own[name], rest, by);
  if (Array.isArray(value)) return value.map((each, at) => (String(at) === name ? next : each));
  return { ...own, [name]: next };
}

/** A value in which one to three places, however deep, hold something else. */
export const damagedValue = (value: unknown): fc.Arbitrary<unknown> => {
  const paths = pathsOf(value);
  return fc
    .array(fc.tuple(fc.constantFrom(...paths.slice(1)), evil), { minLength: 1, maxLength: 3 })
    .map((changes) => changes.reduce((damaged, [path, by]) => replaced(damaged, path, by), value));
};
