import type { Job } from '../../src/pressing';
import type { Ways } from '../words/format';
import { pressWords } from '../words/press';

/** A job as a person would say it. */
export const jobName = ({ kind, spans, order, transfer, copies }: Job, ways: Ways): string =>
  pressWords.job(
    { kind, spans, code: order?.code ?? null, transfer: transfer?.name ?? null, copies: copies.length },
    ways,
  );
