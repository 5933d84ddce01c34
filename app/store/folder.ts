import { create } from 'zustand';

/** The folder to which backups go by themselves, as it is shown. */
export interface ShownFolder {
  readonly name: string;
  /** When the last backup was written there, in milliseconds; `null` before the first. */
  readonly at: number | null;
  /** `waits`: the browser wants the user to allow it once more. `failed`: the last could not be written. */
  readonly state: 'ready' | 'waits' | 'failed';
}

export const useFolder = create<{ readonly folder: ShownFolder | null }>(() => ({ folder: null }));
