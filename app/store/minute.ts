import { useEffect } from 'react';
import { create } from 'zustand';

/** In milliseconds. */
export const MINUTE = 60_000;

const minuteNow = (): number => Math.floor(Date.now() / MINUTE) * MINUTE;

/** One for all that are on the screen, so that no two tell different minutes. */
const useClock = create(() => ({ minute: minuteNow() }));

const look = (): void => {
  const minute = minuteNow();
  if (minute !== useClock.getState().minute) useClock.setState({ minute });
};

/** The minute that it is, while the page is open: the instant at which it began, in milliseconds. */
export function useMinute(): number {
  useEffect(() => {
    look();
    const timer = setInterval(look, 10_000);
    return () => clearInterval(timer);
  }, []);
  return useClock(({ minute }) => minute);
}
