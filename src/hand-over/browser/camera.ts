import type { Remote } from 'comlink';
import { fail, ok, type Result } from '../../units';
import type { Reader } from './reader.worker';

/** What browsers that read codes by themselves offer (W3C Shape Detection, a draft); types do not know it yet. */
interface Detector {
  detect(source: HTMLVideoElement): Promise<readonly { readonly rawValue: string }[]>;
}
interface DetectorClass {
  new (options: { formats: readonly string[] }): Detector;
  getSupportedFormats(): Promise<readonly string[]>;
}

/** Why there is no picture from a camera. */
export type CameraProblem = 'no-camera' | 'not-allowed' | 'not-secure';

/** Between two looks at the picture, in milliseconds. */
const PAUSE = 60;
/** The longer side of a frame that the worker looks at, in pixels. */
const LONGEST = 1280;

const detectorClass = (): DetectorClass | undefined =>
  (globalThis as { BarcodeDetector?: DetectorClass }).BarcodeDetector;

/** The browser's own reader, if it reads these codes. */
async function ownDetector(): Promise<Detector | null> {
  const Class = detectorClass();
  const formats: readonly string[] = (await Class?.getSupportedFormats().catch(() => [])) ?? [];
  return Class && formats.includes('qr_code') ? new Class({ formats: ['qr_code'] }) : null;
}

/** The camera at the back of a phone, or the one that there is. */
export async function openCamera(): Promise<Result<MediaStream, CameraProblem>> {
  if (!navigator.mediaDevices) return fail('not-secure');
  try {
    const video = { facingMode: 'environment', width: { ideal: 1920 }, height: { ideal: 1080 } };
    return ok(await navigator.mediaDevices.getUserMedia({ video, audio: false }));
  } catch (error) {
    const name = error instanceof DOMException ? error.name : '';
    return fail(name === 'NotAllowedError' || name === 'SecurityError' ? 'not-allowed' : 'no-camera');
  }
}

/**
 * Looks for codes in what a video shows, frame by frame: by the browser where it can, else in the worker.
 * @param onText may be told the same text again and again
 */
export async function watchCodes(
  video: HTMLVideoElement,
  reader: Remote<Reader>,
  signal: AbortSignal,
  onText: (text: string) => void,
): Promise<void> {
  const detector = await ownDetector();
  const canvas = document.createElement('canvas');
  const context = canvas.getContext('2d', { willReadFrequently: true });
  const look = async (): Promise<string | null> => {
    if (detector) return (await detector.detect(video))[0]?.rawValue ?? null;
    const { videoWidth, videoHeight } = video;
    const scale = Math.min(1, LONGEST / Math.max(videoWidth, videoHeight));
    canvas.width = Math.round(videoWidth * scale);
    canvas.height = Math.round(videoHeight * scale);
    context?.drawImage(video, 0, 0, canvas.width, canvas.height);
    const image = context?.getImageData(0, 0, canvas.width, canvas.height);
    return image ? reader.frame(image) : null;
  };
  while (!signal.aborted) {
    const text = video.videoWidth > 0 ? await look().catch(() => null) : null;
    if (text !== null && !signal.aborted) onText(text);
    await new Promise((resolve) => setTimeout(resolve, PAUSE));
  }
}
