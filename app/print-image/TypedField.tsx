import { useState } from 'react';
import { Field } from '../parts/Field';
import type { Codec } from '../parts/fields/codec';
import { useReader } from '../store/reader';

/** A figure, or a name, as typed and kept as soon as it can be used; what cannot stays in the field with the reason. */
export function TypedField<Value>({
  label,
  hint,
  codec,
  value,
  onValue,
  onRead,
}: {
  label: string;
  hint: string;
  codec: Codec<Value>;
  value: Value;
  onValue: (value: Value) => void;
  /** Told whether what stands in the field can be used. */
  onRead: (isRead: boolean) => void;
}) {
  const reader = useReader();
  const [typed, setTyped] = useState(codec.show(value, reader));
  const [problem, setProblem] = useState<string | null>(null);
  const type = (text: string) => {
    const read = codec.read(text, reader);
    setTyped(text);
    setProblem(read.ok ? null : read.problem);
    onRead(read.ok);
    if (read.ok) onValue(read.value);
  };
  return (
    <Field
      writes
      label={label}
      hint={hint}
      value={typed}
      {...(codec.inputMode ? { inputMode: codec.inputMode } : {})}
      onChange={type}
      problem={problem}
    />
  );
}
