import { useState } from 'react';
import type { Limits } from '../../src/artwork';
import { edits } from '../../src/editing';
import { fromMm, type Micrometres, ok, parseLength, toUnit } from '../../src/units';
import { asShown } from '../parts/as-shown';
import { Button } from '../parts/Button';
import { Field } from '../parts/Field';
import { Form } from '../parts/Form';
import { useWays } from '../store/selectors';
import { act } from '../store/shop';
import { useWords } from '../words';
import type { Ways } from '../words/format';

const sides = ['stroke', 'opening', 'choke'] as const;
const WIDEST = fromMm(5);

const typedOf = (length: Micrometres, { unit, locale }: Ways): string =>
  `${new Intl.NumberFormat(locale, { maximumFractionDigits: unit === 'mm' ? 2 : 4 }).format(toUnit(length, unit))} ${unit}`;

/** The widths a shop trusts its film with; all artwork is looked at again when they change. */
export function LimitsForm({ limits }: { limits: Limits }) {
  const { lengthProblems, common, artwork: words } = useWords();
  const ways = useWays();
  const shown = {
    stroke: typedOf(limits.stroke, ways),
    opening: typedOf(limits.opening, ways),
    choke: typedOf(limits.choke, ways),
  };
  const [typed, setTyped] = useState(shown);
  const keep = asShown<keyof Limits>(typed, shown);
  const read = (side: keyof Limits) =>
    keep<ReturnType<typeof parseLength>>(side, ok(limits[side]), () =>
      parseLength(typed[side], ways.unit, 'zero'),
    );
  const problemOf = (side: keyof Limits): string | null => {
    const length = read(side);
    if (!length.ok) return lengthProblems[length.problem];
    return length.value > WIDEST ? words.tooWide : null;
  };
  const save = () => {
    const [stroke, opening, choke] = sides.map((side) => read(side));
    if (sides.some((side) => problemOf(side) !== null)) return;
    if (!stroke?.ok || !opening?.ok || !choke?.ok) return;
    act(
      edits.editSettings({
        limits: { stroke: stroke.value, opening: opening.value, choke: choke.value },
      }),
    );
  };
  return (
    <details className="limits">
      <summary>{words.limits}</summary>
      <p className="hint">{words.limitsHint}</p>
      <Form onSubmit={save}>
        {sides.map((side) => (
          <Field
            key={side}
            label={words[side]}
            value={typed[side]}
            onChange={(text) => setTyped({ ...typed, [side]: text })}
            problem={problemOf(side)}
          />
        ))}
        <div className="actions">
          <Button type="submit">{common.save}</Button>
        </div>
      </Form>
    </details>
  );
}
