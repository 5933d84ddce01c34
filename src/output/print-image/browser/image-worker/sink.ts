/** A file that is written from its beginning on. */
export interface Sink {
  write(bytes: Uint8Array<ArrayBuffer>): Promise<void>;
  /** Writes over what was written at a place. */
  rewrite(bytes: Uint8Array<ArrayBuffer>, at: number): Promise<void>;
  /** Ends the file as it is. */
  close(): Promise<void>;
  /** Gives up: nothing of it stays. */
  abandon(): Promise<void>;
}
