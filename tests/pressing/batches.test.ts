import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asId } from '../../src/model';
import { batchesOf, type Job, type JobKind } from '../../src/pressing';

const kinds: readonly JobKind[] = ['print', 'powder', 'cure', 'apart', 'press', 'pack'];
const job = fc
  .record({ kind: fc.constantFrom(...kinds), span: fc.nat({ max: 3 }), of: fc.nat({ max: 2 }) })
  .map(({ kind, span, of }): Omit<Job, 'key'> => {
    const isOrders = kind === 'press' || kind === 'pack';
    const code = `O${of}`;
    return {
      run: { id: asId('run'), name: 'Run 1' },
      kind,
      spans: kind === 'pack' ? [] : [span],
      order: isOrders ? { id: asId(code), code, tint: 0 } : null,
      transfers: [],
      copies: [],
      parts: [],
      fabric: null,
    };
  });
const jobs = fc
  .array(job, { maxLength: 20 })
  .map((all) => all.map((one, at): Job => ({ ...one, key: `${one.kind}/${at}` })));

describe('what is ticked at once', () => {
  it('is all that is open of a kind, of a span until it is cut apart, or of an order behind that', () => {
    fc.assert(
      fc.property(jobs, (open) => {
        const batches = batchesOf(open);
        const wanted = new Map<string, string[]>();
        for (const { kind, order, spans, key } of open) {
          for (const name of [kind, ...(order ? [order.code] : spans.map((span) => `span ${span}`))]) {
            wanted.set(name, [...(wanted.get(name) ?? []), key]);
          }
        }
        const told = batches.map((batch) => [
          batch.by === 'kind' ? batch.kind : batch.by === 'span' ? `span ${batch.span}` : batch.order.code,
          batch.jobs.map(({ key }) => key),
        ]);
        expect(Object.fromEntries(told)).toEqual(
          Object.fromEntries([...wanted].filter(([, keys]) => keys.length > 1)),
        );
      }),
    );
  });
});
