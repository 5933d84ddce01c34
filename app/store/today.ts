import type { LocalDate } from '../../src/units';

/** The calendar date so many days from now, where the shop is. */
export function dayFrom(days: number): LocalDate {
  const day = new Date();
  day.setDate(day.getDate() + days);
  const pad = (value: number) => String(value).padStart(2, '0');
  return `${day.getFullYear()}-${pad(day.getMonth() + 1)}-${pad(day.getDate())}` as LocalDate;
}

export const today = (): LocalDate => dayFrom(0);
