import { useState } from 'react';
import type { KnockOut } from '../../src/artwork';
import type { Artwork, Transfer } from '../../src/model';
import { Button } from '../parts/Button';
import { Tick } from '../parts/Tick';
import { useAllWords } from '../words';
import { takeKnockedOut } from './knock-out';

/** A colour being knocked out: how much of it, with the picture beside it following, and then for good or not. */
export function KnockOutForm({
  transfer,
  artwork,
  knock,
  onChange,
  onClose,
}: {
  transfer: Transfer;
  artwork: Artwork;
  knock: KnockOut;
  onChange: (knock: KnockOut) => void;
  onClose: () => void;
}) {
  const { common, artwork: words } = useAllWords();
  const [making, setMaking] = useState(false);
  const make = async () => {
    setMaking(true);
    await takeKnockedOut(transfer.id, artwork, knock);
    setMaking(false);
    onClose();
  };
  return (
    <section aria-labelledby="knock">
      <h3 id="knock">{words.knockTitle(knock.colour)}</h3>
      <label className="tolerance">
        <span>{words.tolerance}</span>
        <input
          type="range"
          min={0}
          max={160}
          value={knock.tolerance}
          onChange={(event) => onChange({ ...knock, tolerance: event.target.valueAsNumber })}
        />
        <output>{knock.tolerance}</output>
      </label>
      <Tick
        label={words.enclosed}
        checked={knock.reach === 'everywhere'}
        onChange={(everywhere) => onChange({ ...knock, reach: everywhere ? 'everywhere' : 'from-edge' })}
      />
      <p className="hint">{words.knockHint}</p>
      <div className="actions">
        <Button onPress={onClose}>{common.cancel}</Button>
        <Button writes weight="primary" isDisabled={making} onPress={() => void make()}>
          {words.use}
        </Button>
      </div>
    </section>
  );
}
