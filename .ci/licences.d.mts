/** A package that the built app is made from. */
export interface Shipped {
  readonly name: string;
  readonly version: string;
  /** Its SPDX expression. */
  readonly licence: string;
  /** The licence as the package carries it; empty where it carries none. */
  readonly text: string;
}

export function shippedPackages(root: string): Shipped[];
export function licencesText(shipped: readonly Shipped[]): string;
