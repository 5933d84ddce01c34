import { fail, ok, type Result } from '../../../src/units';
import type { Words } from '../../words';
import type { Ways } from '../../words/format';

/** How figures are shown and read, and the words for what cannot be. */
export interface Reader extends Ways {
  readonly words: Words;
}

/** The keys that a phone offers for figures. */
export type Keys = 'decimal' | 'numeric';

/** A value as text and back. */
export interface Codec<Value> {
  /** The value, rounded where it must be; what is shown can be read. */
  readonly show: (value: Value, reader: Reader) => string;
  /** What was typed, or a sentence saying why it cannot be used. */
  readonly read: (text: string, reader: Reader) => Result<Value, string>;
  /** The keys a phone offers; all of them unless told. */
  readonly inputMode?: Keys;
}

/** A problem's code as its sentence. */
export const told = <Value, Problem extends string>(
  read: Result<Value, Problem>,
  sentences: Readonly<Record<Problem, string>>,
): Result<Value, string> => (read.ok ? read : fail(sentences[read.problem]));

/** A value that may be left out: nothing typed is none. */
export const optional = <Value>(codec: Codec<Value>): Codec<Value | null> => ({
  ...codec,
  show: (value, reader) => (value === null ? '' : codec.show(value, reader)),
  read: (text, reader) => (text.trim() === '' ? ok(null) : codec.read(text, reader)),
});
