import { expect, it, vi } from 'vitest';
import { handOverRun, readHandOver, writeHandOver } from '../../src/hand-over';
import { seal, unseal } from '../../src/hand-over/sealed';
import { MODEL_VERSION } from '../../src/model';
import { NOW } from '../editing/book';
import { hash, locked, run } from './shop';

vi.mock('../../src/model/migrations/every-migration', () => {
  throw new TypeError('could not be fetched');
});

it('a hand-over of an older version is not called damaged where what reads it cannot be fetched', async () => {
  const handOver = handOverRun(locked, run, null, NOW) ?? expect.fail('not locked');
  const json = await unseal(await writeHandOver(handOver, hash), hash);
  if (!json.ok) return expect.fail('not sealed');
  const of = async (model: number) =>
    readHandOver(await seal(JSON.stringify({ ...JSON.parse(json.value), model }), hash), hash);
  expect(await of(MODEL_VERSION - 1)).toEqual({ ok: false, problem: 'part-missing' });
  expect(await of(MODEL_VERSION)).toMatchObject({ ok: true });
});
