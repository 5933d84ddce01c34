import { useEffect, useRef, useState } from 'react';
import { FileTrigger } from 'react-aria-components';
import { missing } from '../../src/hand-over';
import { type CodeReader, openCamera, watchCodes } from '../../src/hand-over/browser';
import { Button } from '../parts/Button';
import { useWays } from '../store/selectors';
import { useWords } from '../words';
import { useTaking } from './useTaking';

/** Takes in what another device hands over: by the camera, by pictures of codes, or from a file. */
export function Take() {
  const { handOver: words } = useWords();
  const ways = useWays();
  const { collected, problem, read, open, anew, reader } = useTaking();
  const [stream, setStream] = useState<MediaStream | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);
  useEffect(() => () => stream?.getTracks().forEach((track) => void track.stop()), [stream]);
  const look = async () => {
    const opened = await openCamera();
    setRefusal(opened.ok ? null : words.cameraProblems[opened.problem]);
    setStream(opened.ok ? opened.value : null);
  };
  const lacking = collected ? missing(collected) : [];
  return (
    <section aria-labelledby="take-title">
      <h3 id="take-title">{words.take}</h3>
      <p className="quiet">{words.takeHint}</p>
      <div className="actions">
        {stream ? (
          <Button onPress={() => setStream(null)}>{words.cameraStop}</Button>
        ) : (
          <Button onPress={() => void look()}>{words.camera}</Button>
        )}
        <FileTrigger allowsMultiple onSelect={(files) => files && void open([...files])}>
          <Button isDisabled={!reader}>{words.files}</Button>
        </FileTrigger>
      </div>
      {refusal && <p className="care">{refusal}</p>}
      {stream && reader && <Camera stream={stream} reader={reader} onText={read} />}
      <div aria-live="polite">
        {collected && (
          <p data-testid="codes-read">
            <b>{words.read(collected.parts.length - lacking.length, collected.parts.length, ways)}.</b>{' '}
            {lacking.length > 0 && words.missing(lacking, ways)}
          </p>
        )}
        {problem && <p className="error">{problem}</p>}
      </div>
      {collected && (
        <Button weight="plain" onPress={anew}>
          {words.anew}
        </Button>
      )}
      {!stream && <p className="quiet small">{words.filesHint}</p>}
    </section>
  );
}

/** What the camera sees, looked through for codes as long as it is shown. */
function Camera({
  stream,
  reader,
  onText,
}: {
  stream: MediaStream;
  reader: CodeReader;
  onText: (text: string) => void;
}) {
  const { handOver: words } = useWords();
  const video = useRef<HTMLVideoElement>(null);
  useEffect(() => {
    const element = video.current;
    if (!element) return;
    const stop = new AbortController();
    element.srcObject = stream;
    void element.play().catch(() => undefined);
    void watchCodes(element, reader, stop.signal, onText);
    return () => stop.abort();
  }, [stream, reader, onText]);
  return (
    <div className="camera">
      <video ref={video} muted playsInline aria-label={words.camera} />
      <p className="quiet small">{words.cameraHint}</p>
    </div>
  );
}
