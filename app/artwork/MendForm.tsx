import { useEffect, useRef, useState } from 'react';
import { type InkChange, mostLines } from '../../src/artwork';
import type { Artwork, Mend, Transfer } from '../../src/model';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Tick } from '../parts/Tick';
import { settingsOrFirst, useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { useAllWords } from '../words';
import { fineLength, wholePercent } from '../words/format';
import { screenOf } from './offers';
import { takeMended } from './take-mended';

/** A mend being tried: how far it goes, with the picture beside it following, and then for good or not. */
export function MendForm({
  transfer,
  artwork,
  mend,
  ink,
  onChange,
  onClose,
}: {
  transfer: Transfer;
  artwork: Artwork;
  mend: Mend;
  ink: InkChange | null;
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
      {ink && <p role="status">{words.ink(ink, ways)}</p>}
      <div className="actions">
        <Button onPress={onClose}>{common.cancel}</Button>
        <Button writes weight="primary" isDisabled={making} onPress={() => void make()}>
          {words.use}
        </Button>
      </div>
    </section>
  );
}

/** How far a mend goes, as a figure on a line. */
function Slider({
  label,
  least,
  most,
  value,
  shown,
  onChange,
}: {
  label: string;
  least: number;
  most: number;
  value: number;
  shown: string;
  onChange: (value: number) => void;
}) {
  return (
    <label className="tolerance">
      <span>{label}</span>
      <input
        type="range"
        min={least}
        max={most}
        value={value}
        onChange={(event) => onChange(event.target.valueAsNumber)}
      />
      <output>{shown}</output>
    </label>
  );
}

/** What can be chosen of a mend. */
function MendChoices({ mend, onChange }: { mend: Mend; onChange: (mend: Mend) => void }) {
  const { mends: words } = useAllWords();
  switch (mend.kind) {
    case 'knock-out':
      return (
        <>
          <Slider
            label={words.tolerance}
            least={0}
            most={160}
            value={mend.tolerance}
            shown={String(mend.tolerance)}
            onChange={(tolerance) => onChange({ ...mend, tolerance })}
          />
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
    case 'threshold':
    case 'screen':
      return <SoftChoices mend={mend} onChange={onChange} />;
    case 'thicken':
    case 'defringe':
      return null;
  }
}

type SoftMend = Extract<Mend, { kind: 'threshold' | 'screen' }>;

/** Fewer lines are dots that are seen from across a room. */
const FEWEST_LINES = 10;

/** What is see-through made solid from a share on, or broken into dots. */
function SoftChoices({ mend, onChange }: { mend: SoftMend; onChange: (mend: Mend) => void }) {
  const { mends: words } = useAllWords();
  const ways = useWays();
  const limits = useShop(({ book }) => settingsOrFirst(book).limits);
  return (
    <>
      <Choice
        label={words.softHow}
        value={mend.kind}
        options={(['threshold', 'screen'] as const).map((value) => ({ value, label: words.softHows[value] }))}
        onChange={(kind) => onChange(kind === 'screen' ? screenOf(limits) : { kind, from: 0.5 })}
      />
      {mend.kind === 'threshold' ? (
        <Slider
          label={words.threshold}
          least={5}
          most={100}
          value={Math.round(100 * mend.from)}
          shown={wholePercent(mend.from, ways)}
          onChange={(from) => onChange({ ...mend, from: from / 100 })}
        />
      ) : (
        <Slider
          label={words.lines}
          least={Math.min(FEWEST_LINES, mostLines(mend.least))}
          most={mostLines(mend.least)}
          value={mend.lines}
          shown={String(mend.lines)}
          onChange={(lines) => onChange({ ...mend, lines })}
        />
      )}
      {mend.kind === 'screen' && <p className="hint">{words.dots(fineLength(mend.least, ways))}</p>}
    </>
  );
}
