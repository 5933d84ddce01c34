import { useState } from 'react';
import { edits } from '../../src/editing';
import type { Film } from '../../src/model';
import { Button } from '../parts/Button';
import { Field } from '../parts/Field';
import { Form } from '../parts/Form';
import { shortLength as lengthField } from '../parts/fields/lengths';
import { useReader } from '../store/reader';
import { act } from '../store/shop';
import { notify, openDialog } from '../store/view';
import { shortLength } from '../words/format';

const size = lengthField('above-zero');

/** So much of a film becomes a film of its own, to lay out on. */
export function OffcutForm({ film }: { film: Film }) {
  const reader = useReader();
  const { stock: words } = reader.words;
  const [typed, setTyped] = useState('');
  const [name, setName] = useState(words.cutNameOf(film.name));
  const [problem, setProblem] = useState<string | null>(null);
  const most = film.kind === 'roll' ? film.lengthLeft : film.length;
  const least = film.margins.lead + film.curl + film.margins.tail;
  const cut = () => {
    const read = size.read(typed, reader);
    if (!read.ok) return setProblem(read.problem);
    if (read.value <= least) {
      return setProblem(words.cutTooShort(shortLength(least as typeof most, reader)));
    }
    if (read.value > most) return setProblem(words.cutTooLong(shortLength(most, reader)));
    const called = name.trim() || words.cutNameOf(film.name);
    act(edits.cutOffcut(film.id, read.value, called));
    notify('plain', words.cutDone(called));
    openDialog(null);
  };
  return (
    <details className="more">
      <summary>{words.cut}</summary>
      <Form onSubmit={cut}>
        <Field
          label={words.cutLength(reader.unit)}
          value={typed}
          onChange={setTyped}
          inputMode="decimal"
          problem={problem}
        />
        <Field label={words.cutName} value={name} onChange={setName} />
        <div className="actions">
          <Button writes type="submit">
            {words.cutDo}
          </Button>
        </div>
      </Form>
    </details>
  );
}
