import { createContext, useContext } from 'react';

/** The id of the sentence that says why nothing can be changed now; `null` where all can. */
export const Held = createContext<string | null>(null);

/** A control may say of itself that it changes the book. */
export interface Writing {
  /** It changes the book by itself: it cannot be used while nothing can be changed. */
  readonly writes?: boolean;
}

/** What a control is to the browser: one that `writes` cannot be used while nothing can be changed, and leads a reader to the reason. */
export function useHeld(writes: boolean): {
  readonly isHeld: boolean;
  readonly reason: { readonly 'aria-describedby'?: string };
} {
  const by = useContext(Held);
  return writes && by !== null
    ? { isHeld: true, reason: { 'aria-describedby': by } }
    : { isHeld: false, reason: {} };
}
