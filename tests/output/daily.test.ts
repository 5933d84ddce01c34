import { expect, test } from 'vitest';
import { dailyName, surplus } from '../../src/output/backup';
import type { LocalDate } from '../../src/units';

/** So many days, the first of them the first of September. */
const days = (count: number): string[] =>
  Array.from({ length: count }, (_, at) =>
    dailyName(new Date(Date.UTC(2026, 8, 1 + at)).toISOString().slice(0, 10) as LocalDate),
  );

test.each([0, 1, 30])('%i days are all kept', (count) => {
  expect(surplus(days(count))).toEqual([]);
});

test('of more than thirty days the first go, in whatever order the folder tells them', () => {
  expect(surplus(days(33).toReversed())).toEqual(days(3));
});

test('what the user keeps in the folder beside them is left alone', () => {
  const own = ['rollwright backup 2020-01-01.zip', 'rollwright 2020-01-01 (1).zip', 'photos.zip', 'a'];
  expect(surplus([...own, ...days(31)])).toEqual(days(1));
});
