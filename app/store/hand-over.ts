import { type AsideReason, asideReason, benchEdits, type TakenIn } from '../../src/editing';
import {
  type Carried,
  codesOf,
  type HandOver,
  handBackTicks,
  handOverRun,
  type Picture,
  readHandOver,
  type SealProblem,
  writeHandOver,
} from '../../src/hand-over';
import { asInstant, type Book, type Run, runViewOf } from '../../src/model';
import { fail, ok, type Result } from '../../src/units';
import { sha256 } from '../../src/units/browser/sha256';
import { keepThumbnail, loadThumbnail } from './artwork';
import { act, mayWrite, useShop } from './shop';

/** The longer side of the pictures that go with a run, in pixels. */
const PICTURE = 200;

/** A run, what was ticked on it and is new to the other device, or all that was ticked. */
export type HandOverKind = HandOver['kind'] | 'all-ticks';

/** A thumbnail made small, in the characters a text may have. */
async function small(thumbnail: Blob): Promise<Picture | null> {
  const bitmap = await createImageBitmap(thumbnail).catch(() => null);
  if (!bitmap) return null;
  const scale = Math.min(1, PICTURE / Math.max(bitmap.width, bitmap.height));
  const canvas = new OffscreenCanvas(Math.ceil(bitmap.width * scale), Math.ceil(bitmap.height * scale));
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  const bytes = new Uint8Array(await (await canvas.convertToBlob({ type: 'image/png' })).arrayBuffer());
  const text = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return { type: 'image/png', base64: btoa(text) };
}

async function picturesOf(run: string): Promise<Record<string, Picture>> {
  const { transfer = {} } = runViewOf(useShop.getState().book, run) ?? {};
  const pictures: Record<string, Picture> = {};
  for (const id of new Set(Object.values(transfer).flatMap(({ artwork }) => artwork ?? []))) {
    const thumbnail = await loadThumbnail(id).catch(() => null);
    const picture = thumbnail && (await small(thumbnail));
    if (picture) pictures[id] = picture;
  }
  return pictures;
}

function handOverOf(
  run: string,
  kind: HandOverKind,
  pictures: Record<string, Picture> | null,
  carried: Carried = 'outlines',
): HandOver | null {
  const { book } = useShop.getState();
  const made = asInstant(new Date());
  return kind === 'run'
    ? handOverRun(book, run, pictures, made, carried)
    : handBackTicks(book, run, made, kind === 'ticks' ? 'new' : 'all');
}

/** A run, or what was ticked on it, as a file; `null` if it cannot be handed over. */
export async function handOverFile(run: string, kind: HandOverKind): Promise<Blob | null> {
  const handOver = handOverOf(run, kind, kind === 'run' ? await picturesOf(run) : null);
  return handOver && new Blob([await writeHandOver(handOver, sha256)], { type: 'application/octet-stream' });
}

/** The ids of what was ticked and spoiled here on a run and goes to the other device. */
export function handedBack(book: Book, { id, changed }: Run, kind: Exclude<HandOverKind, 'run'>): string[] {
  const { ticks, spoilages } = handBackTicks(book, id, changed, kind === 'ticks' ? 'new' : 'all')
    ?.records ?? {
    ticks: [],
    spoilages: [],
  };
  return [...ticks, ...spoilages].map((own) => own.id);
}

/** The texts of codes, and whether they carry the outlines that copies are laid by. */
export interface HandedCodes {
  readonly codes: readonly string[];
  readonly carried: Carried;
}

/** The same as codes, without outlines where these would take too many; `null` if there would be too many all the same. */
export async function handOverCodes(run: string, kind: HandOverKind): Promise<HandedCodes | null> {
  for (const carried of ['outlines', 'boxes'] as const) {
    const handOver = handOverOf(run, kind, null, carried);
    const codes = handOver && codesOf(await writeHandOver(handOver, sha256));
    if (codes) return { codes, carried };
  }
  return null;
}

/** What came of a hand-over, and of which run it is. */
export interface Arrived extends TakenIn {
  readonly run: string;
  readonly name: string;
  readonly why: AsideReason | null;
}

/** Verifies what another device handed over and takes it in; nothing is changed before all of it is known to be whole. */
export async function takeInBytes(bytes: Uint8Array): Promise<Result<Arrived, SealProblem | 'not-writing'>> {
  const read = await readHandOver(bytes, sha256);
  if (!read.ok) return read;
  if (!mayWrite()) return fail('not-writing');
  const handOver = read.value;
  if (handOver.kind === 'run') {
    for (const [id, { type, base64 }] of Object.entries(handOver.pictures)) {
      const picture = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
      await keepThumbnail(id, new Blob([picture], { type })).catch(() => undefined);
    }
  }
  const [run, name] =
    handOver.kind === 'run' ? [handOver.run.id, handOver.run.name] : [handOver.run, handOver.name];
  const locked = handOver.kind === 'run' ? handOver.run.snapshot.at : handOver.locked;
  const why = asideReason(useShop.getState().book, { run, locked });
  const taken = act(benchEdits.takeIn(handOver));
  return taken ? ok({ ...taken.result, run, name, why }) : fail('not-writing');
}
