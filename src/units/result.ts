/** What a reader of foreign input gives back: the value, or a problem as a code the words are made from. */
export type Result<Value, Problem> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problem: Problem };

export const ok = <Value>(value: Value): Result<Value, never> => ({ ok: true, value });

export const fail = <Problem>(problem: Problem): Result<never, Problem> => ({ ok: false, problem });
