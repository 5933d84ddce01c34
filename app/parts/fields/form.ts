import { fail, ok, type Result } from '../../../src/units';
import type { Words } from '../../words';
import type { Ways } from '../../words/format';
import type { Codec, Keys, Reader } from './codec';
import type { Place } from './place';

/** Every form that shows stored values; a test draws from the table of each. */
export type FormName =
  | 'added'
  | 'air'
  | 'alternative'
  | 'box'
  | 'check'
  | 'closing'
  | 'costs'
  | 'curing'
  | 'failed'
  | 'film'
  | 'limits'
  | 'pressing'
  | 'prices'
  | 'station';

/** Says something of a field, of the record as it is in the form. */
type Told<Whole> = (words: Words, ways: Ways, record: Whole) => string;

/** A field of a form: what it is called, and how its value in a record is shown and read. */
export interface FormField<Whole> {
  readonly label: Told<Whole>;
  readonly hint?: Told<Whole>;
  /** Lines of text that it has room for; one unless told. */
  readonly rows?: number;
  readonly inputMode?: Keys;
  /** The record's value; `undefined` where the record has no such field. */
  readonly show: (record: Whole, reader: Reader) => string | undefined;
  /** The record with what was typed, or a sentence saying why it cannot be used. */
  readonly read: (record: Whole, text: string, reader: Reader) => Result<Whole, string>;
}

/** A message of a part of the catalogue: by its name, or made from that part. */
type Message<Part, Whole> =
  | { [Name in keyof Part]: Part[Name] extends string ? Name : never }[keyof Part]
  | ((part: Part, ways: Ways, record: Whole) => string);

/** Makes fields that are told in one part of the catalogue. */
export const fieldsIn =
  <Part extends object>(partOf: (words: Words) => Part) =>
  <Whole, Value>(
    place: Place<Whole, Value>,
    codec: Codec<Value>,
    label: Message<Part, Whole>,
    { hint, rows }: { readonly hint?: Message<Part, Whole>; readonly rows?: number } = {},
  ): FormField<Whole> => {
    const told =
      (message: Message<Part, Whole>): Told<Whole> =>
      (words, ways, record) => {
        const part = partOf(words);
        return typeof message === 'function' ? message(part, ways, record) : String(part[message]);
      };
    return {
      label: told(label),
      ...(hint ? { hint: told(hint) } : {}),
      ...(rows ? { rows } : {}),
      ...(codec.inputMode ? { inputMode: codec.inputMode } : {}),
      show(record, reader) {
        const value = place.get(record);
        return value === undefined ? undefined : codec.show(value, reader);
      },
      read(record, text, reader) {
        const read = codec.read(text, reader);
        return read.ok ? ok(place.put(record, read.value)) : read;
      },
    };
  };

/** Sentences beside the fields they belong to. */
export type Problems<Name extends string> = { readonly [Field in Name]?: string };

/** A form as a table of its fields. */
export interface FormTable<Whole, Name extends string> {
  readonly name: FormName;
  readonly fields: Readonly<Record<Name, FormField<Whole>>>;
  /** What is wrong with values together that can each be used. */
  readonly problemsOf?: (record: Whole, reader: Reader) => Problems<Name>;
}

export const formTable = <Whole, Name extends string>(
  table: FormTable<Whole, Name>,
): FormTable<Whole, Name> => table;

/** The names of a form's fields, in their order. */
export function namesOf<Whole, Name extends string>({ fields }: FormTable<Whole, Name>): readonly Name[] {
  const names: Name[] = [];
  for (const name in fields) names.push(name);
  return names;
}

/** What was typed, by the field. */
export type Typed<Name extends string> = { readonly [Field in Name]?: string };

/** A record in a form: what is chosen is in the record already, what is typed is not. Of a new thing some texts are empty. */
export interface Entry<Whole, Name extends string> {
  readonly record: Whole;
  readonly typed: Typed<Name>;
}

/** What stands in a field; `undefined` where the record has no such field. */
export const textOf = <Whole, Name extends string>(
  { fields }: FormTable<Whole, Name>,
  name: Name,
  { record, typed }: Entry<Whole, Name>,
  reader: Reader,
): string | undefined => {
  const shown = fields[name].show(record, reader);
  return shown === undefined ? undefined : (typed[name] ?? shown);
};

/**
 * Reads a form: the record with what was typed in its places. A field whose text is as it is shown is not read, so that its value
 * stays what it was to the last digit; an empty text is read, since nothing of a value can be lost in it.
 * @returns the record, or the sentences beside the fields that cannot be used
 */
export function readForm<Whole, Name extends string>(
  { fields, problemsOf }: FormTable<Whole, Name>,
  { record, typed }: Entry<Whole, Name>,
  reader: Reader,
): Result<Whole, Problems<Name>> {
  const problems: Partial<Record<Name, string>> = {};
  let whole = record;
  for (const name in fields) {
    const text = typed[name];
    const shown = fields[name].show(record, reader);
    if (text === undefined || shown === undefined || (text === shown && text !== '')) continue;
    const read = fields[name].read(whole, text, reader);
    if (read.ok) whole = read.value;
    else problems[name] = read.problem;
  }
  const found = { ...problemsOf?.(whole, reader), ...problems };
  return Object.keys(found).length > 0 ? fail(found) : ok(whole);
}
