import type { Page } from '@playwright/test';
import { readRecords } from '../../../e2e/records';

/**
 * The records of the shop as they lie in the browser's database, with the few fields that a walk reckons with. They are described here
 * once more, and read past the app, so that a fault of the app's own readers cannot hide itself.
 */
export interface Stored {
  readonly order: readonly StoredOrder[];
  readonly transfer: readonly StoredTransfer[];
  readonly copy: readonly StoredCopy[];
  readonly run: readonly StoredRun[];
  readonly film: readonly StoredFilm[];
  readonly entry: readonly StoredEntry[];
  readonly closing: readonly { readonly id: string }[];
  readonly spoilage: readonly { readonly id: string; readonly run: string; readonly copy: string }[];
}

export interface StoredOrder {
  readonly id: string;
  readonly code: string;
  readonly name: string;
  readonly archived: boolean;
  readonly progress: string;
  readonly awaits: { readonly proof: boolean; readonly blanks: boolean };
}

export interface StoredTransfer {
  readonly id: string;
  readonly order: string;
  readonly name: string;
  /** Micrometres, like every length. */
  readonly width: number;
  readonly height: number;
}

export interface StoredCopy {
  readonly id: string;
  readonly transfer: string;
  readonly number: number;
  readonly role: 'ordered' | 'over' | 'filler';
  readonly state: 'waiting' | 'placed' | 'shelved';
  readonly run: string | null;
  readonly place: { readonly x: number; readonly y: number; readonly angle: number } | null;
}

export interface StoredFilm {
  readonly id: string;
  readonly kind: 'roll' | 'sheets';
  readonly name: string;
  readonly width: number;
  readonly gap: number;
  readonly margins: {
    readonly left: number;
    readonly right: number;
    readonly lead: number;
    readonly tail: number;
  };
  readonly lengthLeft?: number;
  readonly sheetsLeft?: number;
}

interface StoredSnapshot {
  readonly film: StoredFilm;
  readonly orders: readonly Pick<StoredOrder, 'id' | 'code' | 'name'>[];
  readonly transfers: readonly StoredTransfer[];
  readonly copies: readonly StoredCopy[];
}

export interface StoredRun {
  readonly id: string;
  readonly name: string;
  readonly film: string;
  readonly state: 'draft' | 'locked' | 'printed' | 'cured' | 'pressed' | 'closed';
  readonly takes: 'all' | 'chosen';
  readonly printed: { readonly to: number; readonly as: readonly StoredSnapshot[] } | null;
  readonly snapshot?: StoredSnapshot;
}

interface StoredEntry {
  readonly id: string;
  readonly item: string;
  readonly amount: number;
}

/** Reads every record of the shop's own book. */
export async function readStored(page: Page): Promise<Stored> {
  const kinds: Record<string, unknown[]> = {};
  for (const [key, value] of Object.entries(await readRecords(page))) {
    const [kind = ''] = key.split('/');
    kinds[kind] = [...(kinds[kind] ?? []), value];
  }
  const none = { order: [], transfer: [], copy: [], run: [], film: [], entry: [], closing: [], spoilage: [] };
  return { ...none, ...kinds };
}
