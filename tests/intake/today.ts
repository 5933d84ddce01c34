import type { LocalDate } from '../../src/units';

/** A Thursday, by the calendar of ISO 8601. */
export const today = '2026-11-26' as LocalDate;
