import { create } from 'zustand';
import {
  type ArtworkCheck,
  coverageOf,
  type Finding,
  findingsOf,
  type Limits,
  type Outline,
  strokeLimit,
} from '../../src/artwork';
import type { CheckRequest } from '../../src/artwork/browser';
import { drawnAs } from '../../src/artwork/browser/drawings';
import type { CoverageOf } from '../../src/costing';
import { filmEdits } from '../../src/editing';
import type { Artwork, Book, Transfer } from '../../src/model';
import { whileSame } from '../../src/units';
import { fetchPart } from '../offline/part';
import { keepArtwork, keepCheck, loadArtworkFile, loadCheck } from './artwork';
import { sayFailed } from './failures';
import { type LateChecker, lateChecker } from './late-checker';
import { settingsOrFirst } from './selectors';
import { act, mayWrite, useShop } from './shop';

/** How far the check of an artwork at a size has come. */
type CheckState =
  | { readonly kind: 'waiting' }
  | { readonly kind: 'running'; readonly share: number }
  | { readonly kind: 'done'; readonly check: ArtworkCheck }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'failed' };

/** Lives until the tab closes; what is done also lies in the artwork store, by the hash of the file. */
export const useChecks = create<{ readonly states: ReadonlyMap<string, CheckState> }>(() => ({
  states: new Map(),
}));

/** Counted up when a check finds something else in the same pixels. */
const CHECK_VERSION = 5;
/** Checks of one artwork at other sizes that are kept with it. */
const MOST_KEPT = 6;

interface Task {
  readonly key: string;
  readonly artwork: Artwork;
  readonly request: CheckRequest;
}

interface KeptChecks {
  readonly version: number;
  readonly checks: readonly (readonly [key: string, check: ArtworkCheck])[];
}

/** What a check depends on beside the file: the printed size and the widths that are looked for. */
const sizeKey = ({ width, height }: Pick<Transfer, 'width' | 'height'>, limits: Limits): string =>
  `${width}x${height} ${strokeLimit(limits)} ${limits.opening}`;

function taskFor(
  book: Pick<Book, 'artwork'>,
  { artwork: id, width, height }: Pick<Transfer, 'artwork' | 'width' | 'height'>,
  limits: Limits,
): Task | null {
  const artwork = id === null ? undefined : book.artwork[id];
  if (!artwork?.trim) return null;
  const { pixels, trim, kind } = artwork;
  return {
    key: `${artwork.id} ${sizeKey({ width, height }, limits)}`,
    artwork,
    request: { pixels, trim, printed: { width, height }, limits, drawn: drawnAs(kind) },
  };
}

const readKept = (stored: unknown): KeptChecks => {
  const kept = stored as KeptChecks | null;
  return kept?.version === CHECK_VERSION ? kept : { version: CHECK_VERSION, checks: [] };
};

const setState = (key: string, state: CheckState): void =>
  useChecks.setState(({ states }) => ({ states: new Map(states).set(key, state) }));

/** A file that decodes to another size than its record says was read by an older version: it is read again. */
async function readAgain(artwork: Artwork, file: Blob): Promise<boolean> {
  if (!mayWrite()) return false;
  const { openArtwork } = await fetchPart(() => import('../../src/artwork/browser'));
  const opened = await openArtwork(new File([file], artwork.fileName, { type: file.type }));
  if (!opened.ok || opened.value.pixels.width === artwork.pixels.width) return false;
  const kept = await keepArtwork(opened.value, artwork.madeFrom);
  if (!kept.ok) return false;
  act(filmEdits.readArtworkAgain(artwork.id, kept.value));
  return true;
}

/** Counted up when other outlines are found in the same pixels: those that are kept are found again when their artwork is looked at. */
const OUTLINE_VERSION = 2;

/** Keeps the outline that copies are laid out by, once the pixels are looked at. */
async function keepOutline(
  { artwork, request }: Task,
  { outline }: ArtworkCheck,
  checker: LateChecker,
): Promise<void> {
  const isAsked = (): boolean => {
    const own = useShop.getState().book.artwork[artwork.id];
    return own !== undefined && own.outlinedBy !== OUTLINE_VERSION && mayWrite();
  };
  if (!isAsked()) return;
  const found = await (await checker.get()).layoutOutline(outline, request);
  if (isAsked()) act(filmEdits.keepOutline(artwork.id, found, OUTLINE_VERSION));
}

/** Why a check ends early: someone said so, or its size or file is no longer that of any transfer. */
const STOPPED = 'stopped';
const NOT_ASKED_FOR = 'not asked for';

/** Stops the check that runs, and takes up again one that was stopped; what does it lives with the open book. */
let runner: { stop(): void; again(key: string): void } | null = null;

export const stopCheck = (): void => runner?.stop();

/** Checks a transfer's artwork after all. */
export function checkAgain(transfer: Transfer): void {
  const { book } = useShop.getState();
  const task = taskFor(book, transfer, settingsOrFirst(book).limits);
  if (task) runner?.again(task.key);
}

/**
 * Checks all artwork of the open book in the background, one at a time, and again when a size, a limit or a file changes. A
 * check that is no longer asked for is stopped.
 * @returns a function that ends it
 */
export function followChecks(): () => void {
  const checker = lateChecker();
  let queue: Task[] = [];
  let running: { readonly key: string; readonly stop: AbortController } | null = null;
  let closed = false;

  const run = async (task: Task, signal: AbortSignal): Promise<void> => {
    const { key, artwork, request } = task;
    const kept = readKept(await loadCheck(artwork.id));
    const own = key.slice(artwork.id.length + 1);
    const known = kept.checks.find(([size]) => size === own)?.[1];
    if (known) {
      setState(key, { kind: 'done', check: known });
      return keepOutline(task, known, checker);
    }
    const file = await loadArtworkFile(artwork.id);
    if (!file) return setState(key, { kind: 'failed' });
    setState(key, { kind: 'running', share: 0 });
    const result = await (await checker.get()).check(
      file,
      request,
      (share) => {
        // Progress comes by a channel of its own, and may come in behind the answer.
        const { states } = useChecks.getState();
        if (!signal.aborted && states.get(key)?.kind === 'running') setState(key, { kind: 'running', share });
      },
      signal,
    );
    if (!result.ok) {
      setState(key, { kind: 'failed' });
      if (result.problem === 'changed' && (await readAgain(artwork, file))) runner?.again(key);
      return;
    }
    setState(key, { kind: 'done', check: result.value });
    const others = kept.checks.filter(([size]) => size !== own);
    const checks = [...others.slice(1 - MOST_KEPT), [own, result.value] as const];
    await keepCheck(artwork.id, { version: CHECK_VERSION, checks } satisfies KeptChecks);
    await keepOutline(task, result.value, checker);
  };

  const next = async (): Promise<void> => {
    if (closed || running) return;
    const task = queue.shift();
    if (!task) return;
    const stop = new AbortController();
    running = { key: task.key, stop };
    await run(task, stop.signal).catch((error) => {
      const { reason } = stop.signal;
      if (reason === undefined) sayFailed('check', error);
      setState(task.key, {
        kind: reason === NOT_ASKED_FOR ? 'waiting' : 'stopped',
      });
    });
    running = null;
    void next();
  };

  let seen: Pick<Book, 'transfer' | 'artwork' | 'settings'> | null = null;
  const follow = (book: Book): void => {
    const same =
      seen?.transfer === book.transfer && seen.artwork === book.artwork && seen.settings === book.settings;
    if (same || closed) return;
    seen = book;
    const { limits } = settingsOrFirst(book);
    const wanted = new Map<string, Task>();
    for (const transfer of Object.values(book.transfer)) {
      const task = taskFor(book, transfer, limits);
      if (task) wanted.set(task.key, task);
    }
    const { states } = useChecks.getState();
    const kept = new Map([...states].filter(([key]) => wanted.has(key)));
    queue = [...wanted.values()].filter(({ key }) => {
      const state = kept.get(key)?.kind;
      return state === undefined || state === 'waiting';
    });
    for (const { key } of queue) kept.set(key, { kind: 'waiting' });
    useChecks.setState({ states: kept });
    if (running && !wanted.has(running.key)) running.stop.abort(NOT_ASKED_FOR);
    void next();
  };

  runner = {
    stop: () => running?.stop.abort(STOPPED),
    again(key) {
      useChecks.setState(({ states }) => ({ states: new Map([...states].filter(([own]) => own !== key)) }));
      seen = null;
      follow(useShop.getState().book);
    },
  };
  follow(useShop.getState().book);
  const unwatch = useShop.subscribe(({ book }) => follow(book));
  return () => {
    closed = true;
    unwatch();
    running?.stop.abort(NOT_ASKED_FOR);
    runner = null;
    checker.close();
    useChecks.setState({ states: new Map() });
  };
}

/** The check of a transfer's artwork at its size; `null` without artwork. */
export function useCheck(transfer: Transfer): CheckState | null {
  const key = useShop(({ book }) => taskFor(book, transfer, settingsOrFirst(book).limits)?.key ?? null);
  return useChecks(({ states }) => (key === null ? null : (states.get(key) ?? null)));
}

/** The outline of an artwork, the same at any size; `null` while it is not known. */
export function outlineNow(artwork: string): Outline | null {
  for (const [key, state] of useChecks.getState().states) {
    if (state.kind === 'done' && key.startsWith(artwork)) return state.check.outline;
  }
  return null;
}

const doneIn = (states: ReadonlyMap<string, CheckState>): number =>
  [...states.values()].filter(({ kind }) => kind === 'done').length;

const coverageIn = whileSame((artwork: Book['artwork'], limits: Limits, _done: number): CoverageOf => {
  const { states } = useChecks.getState();
  return (transfer) => {
    const key = taskFor({ artwork }, transfer, limits)?.key;
    const state = key === undefined ? undefined : states.get(key);
    return state?.kind === 'done' ? coverageOf(state.check.sums, state.check.pixels, transfer) : null;
  };
});

/** What each transfer's artwork prints at its size, as far as its check is done; the same function while nothing changes. */
export function coverageNow(book: Book): CoverageOf {
  return coverageIn(book.artwork, settingsOrFirst(book).limits, doneIn(useChecks.getState().states));
}

/** How many checks are done: what is drawn from them is drawn again when it changes. */
export const useDoneChecks = (): number => useChecks(({ states }) => doneIn(states));

const known = new WeakMap<ArtworkCheck, Map<string, readonly Finding[]>>();

/** What is to be said of a transfer's artwork; the same list for the same check, so that nothing is drawn twice. */
export function findingsFor(check: ArtworkCheck, transfer: Transfer, limits: Limits): readonly Finding[] {
  const { width, height, shade } = transfer;
  const key = `${sizeKey(transfer, limits)} ${shade} ${limits.stroke} ${limits.choke}`;
  let lists = known.get(check);
  if (!lists) {
    lists = new Map();
    known.set(check, lists);
  }
  let list = lists.get(key);
  if (!list) {
    list = findingsOf(check, { width, height, shade }, limits);
    lists.set(key, list);
  }
  return list;
}
