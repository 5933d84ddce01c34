import { describe, expect, it } from 'vitest';
import { leaveRunOut } from '../../src/editing';
import type { Id } from '../../src/model';
import { context, edited, NOW, smallBook } from './book';

describe('a run that is left out of what is calibrated', () => {
  const [one, two] = ['run-1' as Id<'run'>, 'run-2' as Id<'run'>];
  const { book } = smallBook();
  const out = edited(book, (draft) => {
    leaveRunOut(draft, 'powder', one, true, context());
    leaveRunOut(draft, 'colour', one, true, context());
    leaveRunOut(draft, 'powder', two, true, context());
  });

  it('is so for a quantity at a time', () => {
    const listed = Object.values(out.leftOut).map(({ quantity, run, changed }) => ({
      quantity,
      run,
      changed,
    }));
    expect(listed).toEqual([
      { quantity: 'powder', run: one, changed: NOW },
      { quantity: 'colour', run: one, changed: NOW },
      { quantity: 'powder', run: two, changed: NOW },
    ]);
    for (const [id, left] of Object.entries(out.leftOut)) expect(left.id).toBe(id);
  });

  it('is taken in again by itself', () => {
    const back = edited(out, (draft) => leaveRunOut(draft, 'powder', one, false, context()));
    expect(Object.values(back.leftOut).map(({ quantity, run }) => [quantity, run])).toEqual([
      ['colour', one],
      ['powder', two],
    ]);
  });
});
