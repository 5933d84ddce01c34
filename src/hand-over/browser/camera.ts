import { fail, ok, type Result } from '../../units';
import { WorkerFailed } from '../../workers/browser';
import type { CodeReader } from './reader';

/** What browsers that read codes by themselves offer (W3C Shape Detection, a draft); types do not know it yet. */
interface Detector {
  detect(source: HTMLVideoElement): Promise<readonly { readonly rawValue: string }[]>;
}
interface DetectorClass {
  new (options: { formats: readonly string[] }): Detector;
  getSupportedFormats(): Promise<readonly string[]>;
}

/** Why there is no picture from a camera, or none any more: it was pulled out, or the permission taken back. */
export type CameraProblem = 'no-camera' | 'not-allowed' | 'in-use' | 'not-secure' | 'lost';

/** What a refusal means (W3C Media Capture and Streams, `getUserMedia`); all others say that no camera fits. */
const REFUSALS: Readonly<Record<string, CameraProblem>> = {
  NotAllowedError: 'not-allowed',
  SecurityError: 'not-allowed',
  NotReadableError: 'in-use',
  AbortError: 'in-use',
};

/** Between two looks at the picture, in milliseconds. */
const PAUSE = 60;
/** The side of the square that the worker looks at, in pixels, at most. */
const SIDE = 1080;

const detectorClass = (): DetectorClass | undefined =>
  (globalThis as { BarcodeDetector?: DetectorClass }).BarcodeDetector;

/** The browser's own reader, if it reads these codes. */
async function ownDetector(): Promise<Detector | null> {
  const Class = detectorClass();
  const formats: readonly string[] = (await Class?.getSupportedFormats().catch(() => [])) ?? [];
  return Class && formats.includes('qr_code') ? new Class({ formats: ['qr_code'] }) : null;
}

/**
 * The camera at the back of a phone, or the one that there is.
 * @param signal lets go of the camera, be it now or when it comes
 * @param onLost is told when the camera ends by itself
 */
export async function openCamera(
  signal: AbortSignal,
  onLost: () => void,
): Promise<Result<MediaStream, CameraProblem>> {
  if (!navigator.mediaDevices) return fail('not-secure');
  try {
    const video = { facingMode: 'environment', width: { ideal: 1920 }, height: { ideal: 1080 } };
    const stream = await navigator.mediaDevices.getUserMedia({ video, audio: false });
    const tracks = stream.getTracks();
    const close = () => tracks.forEach((track) => void track.stop());
    if (signal.aborted) close();
    else signal.addEventListener('abort', close);
    for (const track of tracks) track.addEventListener('ended', onLost);
    return ok(stream);
  } catch (error) {
    return fail(REFUSALS[error instanceof DOMException ? error.name : ''] ?? 'no-camera');
  }
}

/** Whether a camera does not look away from who holds it: its picture is then shown as in a mirror. */
export const isFacing = (stream: MediaStream): boolean =>
  stream.getVideoTracks()[0]?.getSettings().facingMode !== 'environment';

/** The largest square in the middle of what a video shows: a code is square, and what is beside it only takes time. */
function squareOf(video: HTMLVideoElement, context: CanvasRenderingContext2D): ImageData {
  const { videoWidth, videoHeight } = video;
  const own = Math.min(videoWidth, videoHeight);
  const side = Math.min(SIDE, own);
  if (context.canvas.width !== side) Object.assign(context.canvas, { width: side, height: side });
  context.drawImage(video, (videoWidth - own) / 2, (videoHeight - own) / 2, own, own, 0, 0, side, side);
  return context.getImageData(0, 0, side, side);
}

/** A picture in which nothing can be read is passed over; a worker that failed is not. */
function nothingUnlessFailed(error: unknown): readonly string[] {
  if (error instanceof WorkerFailed) throw error;
  return [];
}

/**
 * Looks for codes in what a video shows, frame by frame: by the browser where it can, else in the worker.
 * @param onText may be told the same text again and again
 * @throws {WorkerFailed} if the worker fails
 */
export async function watchCodes(
  video: HTMLVideoElement,
  reader: CodeReader,
  signal: AbortSignal,
  onText: (text: string) => void,
): Promise<void> {
  let detector = await ownDetector();
  const context = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
  const look = async (): Promise<readonly string[]> => {
    if (detector) {
      try {
        return (await detector.detect(video)).map(({ rawValue }) => rawValue);
      } catch {
        // Some offer a reader that they cannot load.
        detector = null;
      }
    }
    if (!context) return [];
    const text = await reader.frame(squareOf(video, context));
    return text === null ? [] : [text];
  };
  while (!signal.aborted) {
    const isShown = video.readyState >= HTMLMediaElement.HAVE_CURRENT_DATA;
    const texts = isShown ? await look().catch(nothingUnlessFailed) : [];
    if (!signal.aborted) texts.forEach(onText);
    await new Promise((resolve) => setTimeout(resolve, PAUSE));
  }
}
