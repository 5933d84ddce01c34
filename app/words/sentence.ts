/** A piece of a sentence; the figures are set large. */
export interface SentencePart {
  readonly text: string;
  readonly figure: boolean;
}

export const say = (text: string): SentencePart => ({ text, figure: false });

export const figure = (text: string): SentencePart => ({ text, figure: true });
