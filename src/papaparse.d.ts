/**
 * What pure code uses of papaparse. The types that are published for it bring in those of Node, and with them all of Node's globals;
 * `app` and the tests are checked against those, so that the two agree.
 */
interface Reading<Row> {
  readonly data: Row[];
  readonly errors: readonly { readonly type: string }[];
}

/** One row, as it is read. */
interface Step<Row> {
  readonly data: Row;
  readonly errors: readonly { readonly type: string }[];
  readonly meta: { readonly cursor: number };
}

declare const Papa: {
  parse<Row>(text: string, how: { delimiter: string; quoteChar?: string }): Reading<Row>;
  parse<Row>(
    text: string,
    how: {
      delimiter: string;
      quoteChar: string;
      step(step: Step<Row>, parser: { abort(): void }): void;
    },
  ): void;
  unparse(rows: readonly (readonly unknown[])[], how: { delimiter: string; newline: string }): string;
};

export default Papa;
