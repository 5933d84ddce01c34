import { useEffect, useRef } from 'react';
import { type CodeReader, isFacing, watchCodes } from '../../src/hand-over/browser';
import { sayFailed } from '../store/failures';
import { useAllWords } from '../words';

/** What the camera sees, looked through for codes as long as it is shown. */
export function Camera({
  stream,
  reader,
  onText,
  onFailed,
}: {
  stream: MediaStream;
  reader: CodeReader;
  onText: (text: string) => void;
  /** It can no longer look: it is to be turned off. */
  onFailed: () => void;
}) {
  const { handOver: words } = useAllWords();
  const video = useRef<HTMLVideoElement>(null);
  useEffect(() => {
    const element = video.current;
    if (!element) return;
    const stop = new AbortController();
    element.srcObject = stream;
    void element.play().catch(() => undefined);
    // In a window that scrolls it may lie below what is in view.
    element.scrollIntoView({ block: 'nearest' });
    void watchCodes(element, reader, stop.signal, onText).catch((error) => {
      sayFailed('codes', error);
      onFailed();
    });
    return () => stop.abort();
  }, [stream, reader, onText, onFailed]);
  return (
    <video
      ref={video}
      className="camera"
      muted
      playsInline
      aria-label={words.camera}
      data-mirrored={isFacing(stream)}
    />
  );
}
