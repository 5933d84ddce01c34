import { useState } from 'react';
import { useAllWords } from '../../words';
import type { Ways } from '../../words/format';
import { Field } from '../Field';
import type { Reader } from './codec';
import { type Entry, type FormTable, namesOf, type Problems, readForm, type Typed, textOf } from './form';

/**
 * A record in a form. Nothing is taken over before `submit`; what cannot be used stays in its field with the reason.
 * @param given its fields; of a record with a list in it, those of this very record
 * @param open what the form begins with
 */
export function useForm<Whole, Name extends string>(
  given: FormTable<Whole, Name> | ((record: Whole) => FormTable<Whole, Name>),
  open: () => Entry<Whole, Name>,
  ways: Ways,
) {
  const words = useAllWords();
  const reader: Reader = { ...ways, words };
  const [opened, setOpened] = useState(open);
  const [entry, setEntry] = useState(opened);
  const none: Problems<Name> = {};
  const [problems, setProblems] = useState(none);
  const { record } = entry;
  const table = typeof given === 'function' ? given(record) : given;
  /** The field with its label; nothing where the record has none such. */
  const field = (name: Name, hint = table.fields[name].hint?.(words, ways, record)) => {
    const text = textOf(table, name, entry, reader);
    if (text === undefined) return null;
    const { label, inputMode, rows } = table.fields[name];
    return (
      <Field
        key={name}
        label={label(words, ways, record)}
        value={text}
        onChange={(value) => setEntry({ ...entry, typed: { ...entry.typed, [name]: value } })}
        problem={problems[name] ?? null}
        {...(hint ? { hint } : {})}
        {...(inputMode ? { inputMode } : {})}
        {...(rows ? { rows } : {})}
      />
    );
  };
  return {
    reader,
    /** The record as the form was opened with it, and with what has been chosen since. */
    opened: opened.record,
    record,
    /** Another one as soon as something is typed or chosen. */
    entry,
    /** What stands in a field; `undefined` where the record has none such. */
    textOf: (name: Name) => textOf(table, name, entry, reader),
    begin(next: Entry<Whole, Name>) {
      setOpened(next);
      setEntry(next);
      setProblems(none);
    },
    choose: (chosen: Whole) => setEntry({ ...entry, record: chosen }),
    type: (typed: Typed<Name>) => setEntry({ ...entry, typed: { ...entry.typed, ...typed } }),
    read: () => readForm(table, entry, reader),
    submit(take: (record: Whole) => void) {
      const read = readForm(table, entry, reader);
      setProblems(read.ok ? none : read.problem);
      if (read.ok) take(read.value);
    },
    field,
    /** Fields in this order. */
    fields: (...names: readonly Name[]) => names.map((name) => field(name)),
    /** Fields with what stands in them, in a line: what a folded group holds. */
    told: (...names: readonly Name[]) =>
      names
        .flatMap((name) => {
          const text = textOf(table, name, entry, reader);
          return text ? [`${table.fields[name].label(words, ways, record)}: ${text}`] : [];
        })
        .join(' · '),
    /** All that the record has, in the table's order. */
    all: () => namesOf(table).map((name) => field(name)),
  };
}

export type FormOf<Whole, Name extends string> = ReturnType<typeof useForm<Whole, Name>>;
