import { Label, ProgressBar } from 'react-aria-components';
import { Button } from '../parts/Button';
import { useLaidRun, useWays } from '../store/selectors';
import { CloseButton } from '../windows/CloseButton';
import { Window } from '../windows/Window';
import { ImageForm } from './ImageForm';
import { usePrinting } from './printing';
import './print-image.css';
import { useAllWords } from '../words';
import { wholePercent } from '../words/format';

/** Writes what the printer's software takes: says what will be written, and how far it is. */
export function PrintImageDialog() {
  const { printImage: words } = useAllWords();
  const run = useLaidRun();
  const { printing } = usePrinting();
  if (!run) return null;
  return (
    <Window title={words.title}>
      {printing.kind === 'writing' ? <Writing {...printing} /> : <ImageForm run={run} />}
    </Window>
  );
}

function Writing({ share, stop }: { share: number; stop: () => void }) {
  const { printImage: words } = useAllWords();
  const ways = useWays();
  return (
    <>
      <ProgressBar className="image-progress" value={share * 100}>
        <Label>{words.writing}</Label>
        <span>{wholePercent(share, ways)}</span>
        <div className="bar">
          <div className="fill" style={{ width: `${share * 100}%` }} />
        </div>
      </ProgressBar>
      <p className="quiet">{words.goesOn}</p>
      <div className="actions">
        <Button onPress={stop}>{words.stop}</Button>
        <CloseButton />
      </div>
    </>
  );
}
