import type { ReactNode } from 'react';

/**
 * Fields that are saved together, by a button or Enter; the page is never sent anywhere. The first field that cannot be used
 * takes the focus, so that its sentence is in view however long the form is.
 */
export function Form({ onSubmit, children }: { onSubmit: () => void; children: ReactNode }) {
  return (
    <form
      className="fields"
      onSubmit={(event) => {
        event.preventDefault();
        const form = event.currentTarget;
        onSubmit();
        requestAnimationFrame(() => form.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus());
      }}
    >
      {children}
    </form>
  );
}
