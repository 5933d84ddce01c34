import { useEffect, useState } from 'react';

/** In milliseconds. */
export const MINUTE = 60_000;

/** The minute that it is, while the page is open: the instant at which it began, in milliseconds. */
export function useMinute(): number {
  const [minute, setMinute] = useState(() => Math.floor(Date.now() / MINUTE));
  useEffect(() => {
    const timer = setInterval(() => setMinute(Math.floor(Date.now() / MINUTE)), 10_000);
    return () => clearInterval(timer);
  }, []);
  return minute * MINUTE;
}
