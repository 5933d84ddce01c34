/** How many signs were looked at. */
export interface Meter {
  steps: number;
}

/** A place in a text that only moves on: whatever reads by it is linear in the text. */
export class Cursor {
  readonly text: string;
  at = 0;
  private readonly meter: Meter;

  constructor(text: string, meter: Meter = { steps: 0 }) {
    this.text = text;
    this.meter = meter;
  }

  get isAtEnd(): boolean {
    return this.at >= this.text.length;
  }

  startsWith(mark: string): boolean {
    this.meter.steps += mark.length;
    return this.text.startsWith(mark, this.at);
  }

  /** Moves behind the next `mark`, or to the end; gives what lies before it, and `null` where there is none. */
  past(mark: string): string | null {
    const from = this.at;
    const found = this.text.indexOf(mark, from);
    this.at = found < 0 ? this.text.length : found + mark.length;
    this.meter.steps += this.at - from + 1;
    return found < 0 ? null : this.text.slice(from, found);
  }

  /** Moves to the next of some signs, or to the end; gives what lies before it. */
  until(signs: string): string {
    const from = this.at;
    while (this.at < this.text.length && !signs.includes(this.text.charAt(this.at))) this.at += 1;
    this.meter.steps += this.at - from + 1;
    return this.text.slice(from, this.at);
  }

  /** Moves over all of some signs. */
  over(signs: string): void {
    const from = this.at;
    while (this.at < this.text.length && signs.includes(this.text.charAt(this.at))) this.at += 1;
    this.meter.steps += this.at - from + 1;
  }
}
