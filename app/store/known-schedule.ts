import { create } from 'zustand';
import type { DayWork, Timeline } from '../../src/pressing';

/** How hard a schedule is looked for: the Film room asks for a quick one. */
export type Effort = 'quick' | 'thorough';

/** What is known of the day's schedule: the last one found, and whether the next could not be. */
export interface Known {
  readonly found: { readonly day: DayWork; readonly timeline: Timeline } | null;
  readonly failed: boolean;
}

export const UNKNOWN: Known = { found: null, failed: false };

/** Lives until the tab closes, so that a room that is left and come back to finds it. */
export const useSchedule = create<Known>(() => UNKNOWN);
