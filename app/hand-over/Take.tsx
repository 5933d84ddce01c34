import { FileTrigger } from 'react-aria-components';
import { missing } from '../../src/hand-over';
import { Button } from '../parts/Button';
import { FileButton } from '../parts/FileButton';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { Camera } from './Camera';
import { useCamera } from './useCamera';
import { useTaking } from './useTaking';

/** Takes in what another device hands over: by the camera, by pictures of codes, or from a file. */
export function Take() {
  const { handOver: words } = useAllWords();
  const ways = useWays();
  const { collected, problem, read, open, anew, reader } = useTaking();
  const { stream, problem: refusal, isOpening, turnOn, turnOff } = useCamera();
  const lacking = collected ? missing(collected) : [];
  return (
    <section className="hand-over-part" aria-labelledby="take-title">
      <h3 id="take-title">{words.take}</h3>
      <p className="quiet">{words.takeHint}</p>
      <div className="actions">
        {stream ? (
          <Button onPress={turnOff}>{words.cameraStop}</Button>
        ) : (
          <Button isPending={isOpening} onPress={turnOn}>
            {words.camera}
          </Button>
        )}
        <FileTrigger allowsMultiple onSelect={(files) => files && void open([...files])}>
          <FileButton isDisabled={!reader}>{words.files}</FileButton>
        </FileTrigger>
      </div>
      {refusal && (
        <p className="care" role="alert">
          {words.cameraProblems[refusal]}
        </p>
      )}
      <div className="taking">
        {stream && reader && <Camera stream={stream} reader={reader} onText={read} onFailed={turnOff} />}
        <div>
          {stream && <p className="quiet small">{words.cameraHint}</p>}
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
        </div>
      </div>
      {!stream && <p className="quiet small">{words.filesHint}</p>}
    </section>
  );
}
