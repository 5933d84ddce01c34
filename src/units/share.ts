import { fail, ok, type Result } from './result';

export type ShareProblem = 'empty' | 'unreadable' | 'negative' | 'too-much';

/**
 * Reads a percentage as a share: `2.5`, `2,5 %` are 0.025.
 * @param most the largest share
 */
export function parseShare(text: string, most = 1): Result<number, ShareProblem> {
  const plain = text.replace(/[\s\u00a0\u202f%]/g, '');
  if (plain === '') return fail('empty');
  const read = /^([-−])?(\d{1,5}(?:[.,]\d{1,4})?)$/.exec(plain);
  if (!read) return fail('unreadable');
  const share = Number((read[2] ?? '').replace(',', '.')) / 100;
  if (read[1] !== undefined && share > 0) return fail('negative');
  return share > most ? fail('too-much') : ok(share);
}
