/**
 * Keeps values whose fields are saved as they were shown, to the last digit: what is shown is rounded, and in the reader's units.
 * @param typed the form as it is saved
 * @param shown the form as it was opened; `null` where nothing was there before
 * @returns picks a field's value: the known one, or what is read of the text. A known value that is `undefined` is none.
 */
export const asShown =
  <Field extends string>(
    typed: Readonly<Record<Field, string>>,
    shown: Readonly<Record<Field, string>> | null,
  ) =>
  <Value>(field: Field, known: Value | undefined, read: () => Value): Value =>
    shown !== null && known !== undefined && typed[field] === shown[field] ? known : read();
