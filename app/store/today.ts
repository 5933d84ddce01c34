import type { LocalDate } from '../../src/units';

const pad = (value: number) => String(value).padStart(2, '0');

const dateOf = (day: Date): LocalDate =>
  `${day.getFullYear()}-${pad(day.getMonth() + 1)}-${pad(day.getDate())}` as LocalDate;

/** The calendar date of an instant, where the shop is. */
export const dayOf = (instant: string): LocalDate => dateOf(new Date(instant));

/** The calendar date so many days from now, where the shop is. */
export function dayFrom(days: number): LocalDate {
  const day = new Date();
  day.setDate(day.getDate() + days);
  return dateOf(day);
}

export const today = (): LocalDate => dayFrom(0);
