import { benchEdits } from '../../src/editing';
import type { LaidRun } from '../../src/layout';
import { Button } from '../parts/Button';
import { handedBack } from '../store/hand-over';
import { useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { notify, openDialog } from '../store/view';
import { useAllWords } from '../words';
import { dayAndTime } from '../words/format';
import './received.css';

/** That a run came from another device, and what is done with it in the end. */
export function ReceivedBar({ run, made }: { run: LaidRun; made: string }) {
  const { handOver: words } = useAllWords();
  const ways = useWays();
  const count = useShop(({ book }) => {
    const own = book.run[run.id];
    return own ? handedBack(book, own, 'ticks').length : 0;
  });
  const remove = () => {
    act(benchEdits.removeReceived(run.id));
    notify('plain', words.removed(run.name));
  };
  return (
    <div className="received-bar">
      <p>
        <b>{words.received(dayAndTime(made, ways))}.</b> <span className="quiet">{words.receivedHint}</span>
      </p>
      <div className="actions">
        <Button weight="primary" onPress={() => openDialog({ kind: 'hand-over' })}>
          {words.handBack(count, ways)}
        </Button>
        <Button writes weight="plain" onPress={remove}>
          {words.remove}
        </Button>
      </div>
    </div>
  );
}
