import type { ReactNode } from 'react';

/**
 * Fields that are saved together, by a button or Enter; the page is never sent anywhere. The first field that cannot be used
 * takes the focus, so that its sentence is in view however long the form is; a folded group that holds such a field is opened.
 */
export function Form({ onSubmit, children }: { onSubmit: () => void; children: ReactNode }) {
  return (
    <form
      className="fields"
      onSubmit={(event) => {
        event.preventDefault();
        const form = event.currentTarget;
        onSubmit();
        requestAnimationFrame(() => {
          const groups = form.querySelectorAll<HTMLDetailsElement>('details:has([aria-invalid="true"])');
          for (const group of groups) group.open = true;
          form.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
        });
      }}
    >
      {children}
    </form>
  );
}
