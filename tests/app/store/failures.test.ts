import { beforeEach, expect, it } from 'vitest';
import { fetchPart } from '../../../app/offline/part';
import { sayFailed } from '../../../app/store/failures';
import { useView } from '../../../app/store/view';
import { WorkerFailed } from '../../../src/workers/browser';

beforeEach(() => useView.setState({ notices: [] }));

const missingPart = fetchPart(() => Promise.reject(new TypeError('Failed to fetch'))).catch((error) => error);

it.each<[string, unknown, boolean[]]>([
  ['a part of the app that cannot be fetched', await missingPart, [true]],
  ['a worker whose file cannot be fetched', new WorkerFailed('missing'), [true]],
  ['a worker that ended at work', new WorkerFailed('broken'), [false]],
  ['any other failure', new Error('no ink'), [false]],
  ['what was stopped', new DOMException('stopped', 'AbortError'), []],
])('%s is said, with an offer to load the app again where that helps', (_, error, offered) => {
  sayFailed('pdf', error);
  expect(useView.getState().notices.map(({ reload }) => reload)).toEqual(offered);
});
