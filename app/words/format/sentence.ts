/** A piece of a sentence; the figures are set large. */
export interface SentencePart {
  readonly text: string;
  readonly figure: boolean;
  /** The figure opens what it is made of. */
  readonly opens: boolean;
}

export const say = (text: string): SentencePart => ({ text, figure: false, opens: false });

export const figure = (text: string): SentencePart => ({ text, figure: true, opens: false });

/** The full stop of a sentence; a time that ends in one, `9:48 p. m.`, needs no other, nor one that is still worked out, `…`. */
export const stopAfter = (text: string): SentencePart => say(/[.…]$/.test(text) ? '' : '.');

export const opening = (text: string): SentencePart => ({ text, figure: true, opens: true });
