import { Fragment } from 'react';
import type { Chord, Command, Scope } from '../commands/command';
import { commands } from '../commands/keys';
import { Button } from '../parts/Button';
import { openDialog } from '../store/view';
import { Window } from '../windows/Window';
import { useAllWords, useWords } from '../words';

/** Every key, from the very commands that hear them. */
export function KeysDialog() {
  const { keys, common } = useAllWords();
  return (
    <Window title={keys.title}>
      <Keys scope="film" title={keys.onFilm} />
      <Keys scope="everywhere" title={keys.everywhere} />
      <div className="actions">
        <Button onPress={() => openDialog(null)}>{common.close}</Button>
      </div>
    </Window>
  );
}

function Keys({ scope, title }: { scope: Scope; title: string }) {
  const { commands: labels } = useWords();
  const byLabel = new Map<Command['label'], Chord[]>();
  for (const { label, chords, scope: heard } of commands) {
    if (heard === scope && chords.length > 0) byLabel.set(label, [...(byLabel.get(label) ?? []), ...chords]);
  }
  return (
    <section>
      <p className="quiet small">{title}</p>
      <dl className="key-list">
        {[...byLabel].map(([label, chords]) => (
          <Fragment key={label}>
            <dt>
              {chords.map((chord) => (
                <ChordKeys key={JSON.stringify(chord)} chord={chord} />
              ))}
            </dt>
            <dd>{labels[label]}</dd>
          </Fragment>
        ))}
      </dl>
    </section>
  );
}

function ChordKeys({ chord }: { chord: Chord }) {
  const { keys } = useAllWords();
  const parts = [
    ...(chord.mod ? [keys.mod] : []),
    ...(chord.shift ? [keys.shift] : []),
    ...(chord.alt ? [keys.alt] : []),
    keys.names[chord.key] ?? chord.key.toUpperCase(),
  ];
  return (
    <>
      <kbd>{parts.join(' + ')}</kbd>{' '}
    </>
  );
}
