import { useState } from 'react';
import { isOfSize, type TradeSize, tradeSize, tradeSizes } from '../../src/costing';
import type { Film } from '../../src/model';
import type { Micrometres } from '../../src/units';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Field } from '../parts/Field';
import { shortLength } from '../parts/fields/lengths';
import { useReader } from '../store/reader';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { otherSize, type Way } from './ways';

/** A size that film is sold in, to be compared as well: sheets against a roll, or a roll against sheets. */
export function OtherTradeSize({ film, onAdd }: { film: Film; onAdd: (way: Way) => void }) {
  const { compare: words, filmForm } = useAllWords();
  const { unit } = useWays();
  const names: Readonly<Record<TradeSize, string>> = {
    ...filmForm.presets[unit],
    ...filmForm.sheetPresets[unit],
  };
  const others = tradeSizes.filter((size) => !isOfSize(film, tradeSize(size, unit)));
  const [chosen, setChosen] = useState(others.find((size) => tradeSize(size, unit).kind !== film.kind));
  if (chosen === undefined) return null;
  return (
    <div className="ways-other">
      <Choice
        label={words.addSize}
        value={chosen}
        options={others.map((value) => ({ value, label: names[value] }))}
        onChange={setChosen}
      />
      <Button
        aria-label={`${words.add}: ${words.addSize}`}
        onPress={() => onAdd(otherSize(film, tradeSize(chosen, unit), names[chosen]))}
      >
        {words.add}
      </Button>
    </div>
  );
}

const size = shortLength('above-zero');

/** A length that is typed to be compared as well. */
export function OtherLength({
  label,
  hint,
  onAdd,
}: {
  label: string;
  hint?: string;
  onAdd: (length: Micrometres) => void;
}) {
  const reader = useReader();
  const { compare: words } = reader.words;
  const [typed, setTyped] = useState('');
  const [problem, setProblem] = useState<string | null>(null);
  const add = () => {
    const read = size.read(typed, reader);
    if (!read.ok) return setProblem(read.problem);
    setProblem(null);
    setTyped('');
    onAdd(read.value);
  };
  return (
    <div className="ways-other">
      <Field label={label} value={typed} onChange={setTyped} problem={problem} {...(hint ? { hint } : {})} />
      <Button aria-label={`${words.add}: ${label}`} onPress={add}>
        {words.add}
      </Button>
    </div>
  );
}
