import type { ReactNode } from 'react';

/** Fields that are saved together, by a button or Enter; the page is never sent anywhere. */
export function Form({ onSubmit, children }: { onSubmit: () => void; children: ReactNode }) {
  return (
    <form
      className="fields"
      onSubmit={(event) => {
        event.preventDefault();
        onSubmit();
      }}
    >
      {children}
    </form>
  );
}
