import { transfer } from 'comlink';
import type { ArtworkOutline, Mend } from '../../model';
import { fail, fromInches, type Micrometres, ok, type Result } from '../../units';
import { closeWorker, runTask, type TaskWorker, taskWorker } from '../../workers/browser';
import type { ArtworkCheck, Contour, Density, Outline } from '..';
import type { ArtworkReader } from './artwork.worker';
import type { CheckRequest, MendedPicture } from './check-request';
import { drawPdf, pdfFacts } from './pdf-image';
import type { ArtworkProblem, WeighedSvg } from './read-artwork';
import { drawSvg } from './svg-image';

type Printed = CheckRequest['printed'];

/** What of an image is printed, and how large. */
type PrintedBox = Omit<CheckRequest, 'limits'>;

/** A worker that looks at artwork, one question at a time. Any of them throws a `WorkerFailed` if it fails. */
export interface Checker {
  /** @throws the signal's reason, if it is aborted */
  check(
    file: Blob,
    request: CheckRequest,
    onShare: (share: number) => void,
    signal: AbortSignal,
  ): Promise<Result<ArtworkCheck, 'unreadable' | 'changed'>>;
  /** The trimmed box for the screen, mended if it is to be; `null` if it cannot be decoded. A drawing is shown as it is. */
  picture(file: Blob, of: PrintedBox, longest: number, mend: Mend | null): Promise<MendedPicture | null>;
  /** The white under a picture of a printed box, which is handed over. */
  white(picture: ImageBitmap, printed: Printed, choke: Micrometres): Promise<ImageBitmap>;
  /**
   * The whole image, mended, as a PNG; `null` if it cannot be decoded.
   * @throws the signal's reason, if it is aborted
   */
  mend(
    file: Blob,
    of: Omit<PrintedBox, 'drawn'>,
    mend: Mend,
    density: Density | null,
    signal: AbortSignal,
  ): Promise<Blob | null>;
  /** The outline that copies are laid out by; `null` where that is their box. */
  layoutOutline(
    outline: Outline,
    request: Pick<CheckRequest, 'printed' | 'trim'>,
  ): Promise<ArtworkOutline | null>;
  /** An outline at its printed size, grown on all sides. */
  grow(outline: Outline, printed: Printed, by: Micrometres): Promise<readonly Contour[]>;
  close(): void;
}

/** An SVG or a PDF is looked at in this many pixels an inch, and in no more pixels than {@link MOST_DRAWN}. */
const DRAWN_PPI = 300;
const MOST_DRAWN = 16_000_000;

/** How many pixels a drawing's box is drawn in for a size. */
function drawnSize({ width, height }: Printed): { width: number; height: number } {
  const inch = DRAWN_PPI / fromInches(1);
  const scale = Math.min(inch, Math.sqrt(MOST_DRAWN / (width * height)));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

export const artworkWorker = (): TaskWorker<ArtworkReader> =>
  taskWorker(() => new Worker(new URL('./artwork.worker.ts', import.meta.url), { type: 'module' }));

/** Weighs an SVG: none is drawn before. */
export const weigh = (
  own: TaskWorker<ArtworkReader>,
  file: Blob,
): Promise<Result<WeighedSvg, ArtworkProblem>> =>
  runTask(own, (remote): Promise<Result<WeighedSvg, ArtworkProblem>> => remote.weigh(file));

export function openChecker(): Checker {
  const own = artworkWorker();
  return {
    check: (file, request, onProgress, signal) =>
      runTask<ArtworkReader, Result<ArtworkCheck, 'unreadable' | 'changed'>, number>(
        own,
        async (remote, told) => {
          if (!request.drawn) return remote.check(file, request, told);
          const { pixels, trim, printed } = request;
          const isPdf = request.drawn === 'pdf';
          if (!isPdf && !(await remote.weigh(file)).ok) return fail('unreadable');
          const facts = isPdf ? await pdfFacts(file, signal) : await remote.facts(file);
          const draw = isPdf ? drawPdf : drawSvg;
          const drawn = facts && (await draw(file, pixels, trim, drawnSize(printed), signal));
          if (!drawn) return fail('unreadable');
          return ok(await remote.checkDrawn(transfer(drawn, [drawn]), request, facts, told));
        },
        { signal, onProgress },
      ),
    async picture(file, { pixels, trim, printed, drawn }, longest, mend) {
      if (!drawn) return runTask(own, (remote) => remote.picture(file, trim, printed, longest, mend));
      if (drawn === 'svg' && !(await weigh(own, file)).ok) return null;
      const scale = longest / Math.max(trim.width, trim.height);
      const [width, height] = [Math.round(trim.width * scale), Math.round(trim.height * scale)];
      const draw = drawn === 'svg' ? drawSvg : drawPdf;
      const size = { width: Math.max(1, width), height: Math.max(1, height) };
      const picture = await draw(file, pixels, trim, size);
      return picture && { picture, ink: null };
    },
    white: (picture, printed, choke) =>
      runTask(own, (remote) => remote.white(transfer(picture, [picture]), printed, choke)),
    mend: (file, { trim, printed }, mend, density, signal) =>
      runTask(own, (remote) => remote.mend(file, trim, printed, mend, density), { signal }),
    layoutOutline: (outline, { printed, trim }) =>
      runTask(own, (remote) => remote.layoutOutline(outline, { printed, trim })),
    grow: (outline, printed, by) => runTask(own, (remote) => remote.grow(outline, printed, by)),
    close: () => closeWorker(own),
  };
}
