import { useBenchRun } from '../store/selectors';
import { useShop } from '../store/shop';
import { CloseButton } from '../windows/CloseButton';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { Give } from './Give';
import { Take } from './Take';
import './hand-over.css';

/** Between two devices, without a server: the run at the bench handed over, another's taken in. */
export function HandOverDialog() {
  const { handOver: words } = useAllWords();
  const laid = useBenchRun();
  const run = useShop(({ book }) => (laid ? book.run[laid.id] : undefined));
  return (
    <Window title={words.title}>
      {run && run.state !== 'draft' && <Give run={run} />}
      {run?.state === 'draft' && <p className="quiet">{words.draft(run.name)}</p>}
      <Take />
      <div className="actions">
        <CloseButton />
      </div>
    </Window>
  );
}
