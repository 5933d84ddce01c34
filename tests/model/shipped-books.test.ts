import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checked } from '../../src/editing';
import { artworkInUse, readKept } from '../../src/model';
import { freshIds } from '../editing/book';

/**
 * Books as the code of shipped versions wrote them, each made by that version's own edits: a roll, one order, artwork, a garment and a
 * place, a run that was locked, printed in part and locked again, a step of undo. Version 3 shipped in three kinds.
 */
const FOLDER = join(import.meta.dirname, 'books');

interface Shipped {
  readonly version: number;
  readonly records: Readonly<Record<string, unknown>>;
}

const books = readdirSync(FOLDER).map((name): [string, Shipped] => [
  name.replace('.json', ''),
  JSON.parse(readFileSync(join(FOLDER, name), 'utf8')),
]);

describe.each(books)('a book of %s', async (_, { version, records }) => {
  const kept = await readKept(new Map(Object.entries(records)), version);
  const read = kept.ok ? kept.value : null;
  const of = (collection: string) =>
    Object.keys(records).filter((key) => key.startsWith(`${collection}/`)).length;

  it('comes through whole, but for steps of undo', () => {
    expect(read?.setAside).toEqual([]);
    for (const name of [
      'order',
      'transfer',
      'garment',
      'placement',
      'copy',
      'artwork',
      'film',
      'run',
    ] as const)
      expect(Object.keys(read?.book[name] ?? {}).length, name).toBe(of(name));
    expect(Object.keys(read?.book.settings ?? {})).toEqual(['shop']);
  });

  it('keeps its locked run, what was printed before, and every copy in its place', () => {
    const run = Object.values(read?.book.run ?? {}).find(({ state }) => state !== 'closed');
    // Version 2 had drafts alone.
    if (version > 2) {
      expect(run).toMatchObject({
        state: 'locked',
        printed: { to: 95_000, as: [{ copies: [{ number: 1 }] }] },
      });
      expect(run?.state === 'locked' && run.snapshot.copies.length).toBe(4);
    }
    const { takenOff } = checked(read?.book ?? expect.fail(), freshIds());
    expect(takenOff).toEqual([]);
    const placed = Object.values(read?.book.copy ?? {}).filter(({ state }) => state === 'placed');
    expect(placed.filter((copy) => copy.run === run?.id).length).toBe(5);
  });

  // What versions before did not count.
  if (version >= 19)
    it('keeps what a closed run did, what its cost rests on, rates found and the step that undo takes back', () => {
      const { closing, run, calibration, step } = read?.book ?? expect.fail();
      const [closed] = Object.values(closing);
      expect(closed?.work).toMatchObject({ copies: 2, pressed: 2, platenClosings: 7 });
      for (const each of Object.values(run))
        expect(each.state !== 'draft' && each.basis?.use.machines, each.name).toMatchObject({ ready: 120 });
      expect(Object.values(calibration)).toMatchObject([{ quantity: 'hands', driver: 'pressed' }]);
      expect(Object.keys(step)).toEqual(['000000001']);
    });

  it('has no copy that waits for a run which was locked without it', () => {
    const { copy, run } = read?.book ?? expect.fail();
    for (const waiting of Object.values(copy).filter(({ state }) => state === 'waiting'))
      expect(waiting.run === null || run[waiting.run]?.state === 'draft', waiting.id).toBe(true);
  });

  it('names the images it has, so that none is swept', () => {
    const named = Object.keys(records).flatMap((key) => (key.startsWith('artwork/') ? key.slice(8) : []));
    expect(artworkInUse(read?.book ?? expect.fail())).toEqual(new Set(named));
  });
});
