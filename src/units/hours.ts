import { fail, ok, type Result } from './result';

/** `ends-first`: a stretch ends before it begins; `overlap`: two of a day have a time in common. */
export type HoursProblem = 'unreadable' | 'ends-first' | 'overlap';

/** A stretch of a day, both `HH:MM`. */
interface Stretch {
  readonly from: string;
  readonly to: string;
}

const TIME = /^(\d{1,2})(?:[:.h](\d{2}))?\s*h?\s*([ap])?\.?\s*(?:m\.?)?$/i;

/** A time of day as `HH:MM`: `8`, `8:30`, `8.30`, `5 pm`, `17h`; midnight at the end of a day is the last minute. */
function readTime(text: string): string | null {
  const [, hour = '', minute = '00', half = ''] = TIME.exec(text.trim()) ?? [];
  const figure = Number(hour);
  if (hour === '' || (half !== '' && (figure < 1 || figure > 12))) return null;
  const hours = half === '' ? figure : (figure % 12) + (half.toLowerCase() === 'p' ? 12 : 0);
  if (hours === 24 && Number(minute) === 0) return '23:59';
  if (hours > 23 || Number(minute) > 59) return null;
  return `${String(hours).padStart(2, '0')}:${minute}`;
}

/** Reads the hours of a day, the earliest first: `8:00-12:00, 12:30-17:00`; nothing is a day that is closed. */
export function parseHours(text: string): Result<Stretch[], HoursProblem> {
  const parts = text
    .split(/[,;\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const stretches: Stretch[] = [];
  for (const part of parts) {
    const [begin = '', end = '', ...more] = part.split(/\s*(?:[-–—]|\bto\b|\ba\b(?!\.?\s*m\b))\s*/i);
    const from = readTime(begin);
    const to = readTime(end);
    if (from === null || to === null || more.length > 0) return fail('unreadable');
    if (to <= from) return fail('ends-first');
    stretches.push({ from, to });
  }
  stretches.sort((a, b) => (a.from < b.from ? -1 : 1));
  const isOverlap = stretches.some(({ from }, at) => from < (stretches[at - 1]?.to ?? ''));
  return isOverlap ? fail('overlap') : ok(stretches);
}
