import type { ReactNode } from 'react';

/** A line over the rooms that stays as long as what it says. */
export function Band({ tone, children }: { tone?: 'care' | 'error'; children: ReactNode }) {
  return (
    <aside className={tone ? `band ${tone}-band` : 'band'} role={tone === 'error' ? 'alert' : undefined}>
      {children}
    </aside>
  );
}
