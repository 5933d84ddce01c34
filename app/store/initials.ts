import { create } from 'zustand';
import { remember, remembered } from '../../src/storage';

const KEY = 'rollwright-initials';

/** The initials of who works at this device, which remembers them; empty until somebody says. */
export const useInitials = create(() => ({ by: remembered(KEY) ?? '' }));

export const initialsNow = (): string => useInitials.getState().by.trim();

export function sayInitials(by: string): void {
  remember(KEY, by.trim());
  useInitials.setState({ by });
}
