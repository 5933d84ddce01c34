import type { Job } from '../../src/pressing';
import { allWordsNow } from '../words';
import type { Ways } from '../words/format';

/** A job as a person would say it. */
export const jobName = ({ kind, spans, order, transfers, copies }: Job, ways: Ways): string =>
  allWordsNow().press.job(
    {
      kind,
      spans,
      code: order?.code ?? null,
      transfers: transfers.map(({ name }) => name),
      copies: copies.length,
    },
    ways,
  );
