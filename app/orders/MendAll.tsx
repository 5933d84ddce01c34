import { useState } from 'react';
import { type Mend, sharedFaults, type TableReading } from '../../src/intake';
import { Button } from '../parts/Button';
import { Field } from '../parts/Field';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';

type Fault = ReturnType<typeof sharedFaults>[number];

/** No more faults are offered at once; the next follow as these are mended. */
const MOST_OFFERED = 8;

/** Mends a fault in all rows that share it, by one text; what was mended so can be taken back. */
export function MendAll({
  bad,
  mends,
  onChange,
}: {
  bad: TableReading['bad'];
  mends: readonly Mend[];
  onChange: (mends: readonly Mend[]) => void;
}) {
  const { table: words } = useAllWords();
  const faults = sharedFaults(bad).slice(0, MOST_OFFERED);
  if (faults.length === 0 && mends.length === 0) return null;
  return (
    <fieldset className="mapping">
      <legend>{words.mendAll}</legend>
      {faults.map((fault) => (
        <MendOne
          key={`${fault.column} ${fault.text}`}
          fault={fault}
          onMend={(as) => onChange([...mends, { column: fault.column, text: fault.text, as }])}
        />
      ))}
      {mends.map((mend) => (
        <div key={`${mend.column} ${mend.text}`} className="actions">
          <p className="quiet">{words.isReadAs(words.columns[mend.column], mend.text, mend.as)}</p>
          <Button onPress={() => onChange(mends.filter((other) => other !== mend))}>{words.takeBack}</Button>
        </div>
      ))}
    </fieldset>
  );
}

function MendOne({ fault: { column, text, rows }, onMend }: { fault: Fault; onMend: (as: string) => void }) {
  const { table: words } = useAllWords();
  const ways = useWays();
  const [typed, setTyped] = useState('');
  return (
    <div className="actions">
      <Field label={words.readAs(words.columns[column], text)} value={typed} onChange={setTyped} />
      <Button onPress={() => onMend(typed.trim())}>{words.inRows(rows, ways)}</Button>
    </div>
  );
}
