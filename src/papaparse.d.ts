/**
 * What pure code uses of papaparse. The types that are published for it bring in those of Node, and with them all of Node's globals;
 * `app` and the tests are checked against those, so that the two agree.
 */
interface Reading<Row> {
  readonly data: Row[];
  readonly errors: readonly { readonly type: string }[];
}

declare const Papa: {
  parse<Row>(text: string, how: { delimiter: string; quoteChar?: string }): Reading<Row>;
  unparse(rows: readonly (readonly unknown[])[], how: { delimiter: string; newline: string }): string;
};

export default Papa;
