import type { Job } from '../../src/pressing';
import { wordsNow } from '../words';
import type { Ways } from '../words/format';

/** A job as a person would say it. */
export const jobName = ({ kind, spans, order, transfer, copies }: Job, ways: Ways): string =>
  wordsNow().press.job(
    { kind, spans, code: order?.code ?? null, transfer: transfer?.name ?? null, copies: copies.length },
    ways,
  );
