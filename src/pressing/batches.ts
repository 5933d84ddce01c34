import type { Job, JobKind } from './jobs';

/** Jobs that are ticked at once. */
export type Batch = (
  | { readonly by: 'kind'; readonly kind: JobKind }
  /** The film of a span, as far as its copies are out. */
  | { readonly by: 'span'; readonly span: number }
  /** What is done to an order's copies once they are out of the film. */
  | { readonly by: 'order'; readonly order: NonNullable<Job['order']> }
) & { readonly jobs: readonly Job[] };

/**
 * What of some jobs can be ticked at once: all of a kind, all of a span, all of an order, each in the order in which it comes up
 * first; a single job is no batch.
 * @param open the jobs that are not done
 */
export function batchesOf(open: readonly Job[]): Batch[] {
  const kinds = [...new Set(open.map(({ kind }) => kind))];
  const film = open.filter(({ order }) => order === null);
  const spans = [...new Set(film.flatMap((job) => job.spans))].sort((a, b) => a - b);
  const orders = new Map(open.flatMap(({ order }) => (order ? [[order.id, order] as const] : [])));
  const all: Batch[] = [
    ...kinds.map((kind) => ({ by: 'kind' as const, kind, jobs: open.filter((job) => job.kind === kind) })),
    ...spans.map((span) => ({
      by: 'span' as const,
      span,
      jobs: film.filter((job) => job.spans.includes(span)),
    })),
    ...[...orders.values()].map((order) => ({
      by: 'order' as const,
      order,
      jobs: open.filter((job) => job.order?.id === order.id),
    })),
  ];
  return all.filter(({ jobs }) => jobs.length > 1);
}
