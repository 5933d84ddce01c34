import { openDialog, useView } from '../store/view';
import { type Command, matches } from './command';
import { filmCommands } from './film';
import { redoCommand, undoCommand } from './history';

const keysCommand: Command = {
  id: 'keys',
  label: 'keys',
  scope: 'everywhere',
  chords: [{ key: '?' }],
  available: () => useView.getState().dialog === null,
  run: () => openDialog({ kind: 'keys' }),
};

export const commands: readonly Command[] = [...filmCommands, undoCommand, redoCommand, keysCommand];

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && target.closest('input, textarea, select, [contenteditable]') !== null;

/** Hears the keys of all commands until the signal is aborted. Fields and open windows keep their own keys. */
export function listenForKeys(signal: AbortSignal): void {
  const onKey = (event: KeyboardEvent): void => {
    if (event.defaultPrevented || useView.getState().dialog !== null || isTyping(event.target)) return;
    const onFilm = event.target instanceof HTMLElement && event.target.closest('[data-keys="film"]') !== null;
    const command = commands.find(
      ({ scope, chords }) =>
        (scope === 'everywhere' || onFilm) && chords.some((chord) => matches(chord, event)),
    );
    if (!command) return;
    event.preventDefault();
    if (command.available()) command.run();
  };
  addEventListener('keydown', onKey, { signal });
}
