import { useEffect, useRef, useState } from 'react';
import type { Artwork, Mend, Transfer } from '../../src/model';
import { Button } from '../parts/Button';
import { Tick } from '../parts/Tick';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { takeMended } from './take-mended';

/** A mend being tried: how far it goes, with the picture beside it following, and then for good or not. */
export function MendForm({
  transfer,
  artwork,
  mend,
  onChange,
  onClose,
}: {
  transfer: Transfer;
  artwork: Artwork;
  mend: Mend;
  onChange: (mend: Mend) => void;
  onClose: () => void;
}) {
  const { common, mends: words } = useAllWords();
  const ways = useWays();
  const [making, setMaking] = useState(false);
  const stop = useRef(new AbortController());
  useEffect(() => () => stop.current.abort(), []);
  const make = async () => {
    setMaking(true);
    await takeMended(transfer.id, artwork, mend, stop.current.signal);
    if (!stop.current.signal.aborted) onClose();
  };
  return (
    <section aria-labelledby="mend">
      <h3 id="mend">{words.title(mend, ways)}</h3>
      <MendChoices mend={mend} onChange={onChange} />
      <p className="hint">{words.hint(mend)}</p>
      <div className="actions">
        <Button onPress={onClose}>{common.cancel}</Button>
        <Button writes weight="primary" isDisabled={making} onPress={() => void make()}>
          {words.use}
        </Button>
      </div>
    </section>
  );
}

/** What can be chosen of a mend. */
function MendChoices({ mend, onChange }: { mend: Mend; onChange: (mend: Mend) => void }) {
  const { mends: words } = useAllWords();
  switch (mend.kind) {
    case 'knock-out':
      return (
        <>
          <label className="tolerance">
            <span>{words.tolerance}</span>
            <input
              type="range"
              min={0}
              max={160}
              value={mend.tolerance}
              onChange={(event) => onChange({ ...mend, tolerance: event.target.valueAsNumber })}
            />
            <output>{mend.tolerance}</output>
          </label>
          <Tick
            label={words.enclosed}
            checked={mend.reach === 'everywhere'}
            onChange={(everywhere) => onChange({ ...mend, reach: everywhere ? 'everywhere' : 'from-edge' })}
          />
        </>
      );
    case 'take-off':
      return (
        <Tick
          label={words.specksToo}
          checked={mend.reach === 'everywhere'}
          onChange={(everywhere) => onChange({ ...mend, reach: everywhere ? 'everywhere' : 'strays' })}
        />
      );
    case 'thicken':
    case 'defringe':
      return null;
  }
}
