import type { Words } from '../words';

/** Where a command's keys are heard: everywhere, or only while the film or the list of copies has the focus. */
export type Scope = 'everywhere' | 'film';

/** A key and the modifiers held with it. `Mod` is Ctrl, or Command where there is one. */
export interface Chord {
  /** `KeyboardEvent.key`, letters in lower case. */
  readonly key: string;
  readonly mod?: boolean;
  readonly shift?: boolean;
  readonly alt?: boolean;
}

/** One act: the button, the key and the page of keys all come from it. */
export interface Command {
  readonly id: string;
  /** Its label in the catalogue. */
  readonly label: keyof Words['commands'];
  readonly scope: Scope;
  readonly chords: readonly Chord[];
  available(): boolean;
  run(): void;
}

const hasMod = (event: KeyboardEvent): boolean => event.ctrlKey || event.metaKey;

export function matches(chord: Chord, event: KeyboardEvent): boolean {
  const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  return (
    key === chord.key &&
    hasMod(event) === (chord.mod ?? false) &&
    event.altKey === (chord.alt ?? false) &&
    // Signs such as ? and + need Shift on some keyboards and not on others.
    (/^[a-z]$/.test(key) || key.length > 1 ? event.shiftKey === (chord.shift ?? false) : true)
  );
}
