import { expect, it } from 'vitest';
import { countOf } from '../../src/units';

it('a table is counted once, and another one anew', () => {
  let looked = 0;
  const table = (ids: readonly string[]) =>
    new Proxy(Object.fromEntries(ids.map((id) => [id, 1])), {
      ownKeys(target) {
        looked += 1;
        return Reflect.ownKeys(target);
      },
    });
  const two = table(['a', 'b']);
  expect([countOf(two), countOf(two), looked]).toEqual([2, 2, 1]);
  expect([countOf(table([])), looked]).toEqual([0, 2]);
});
