import { type ReactNode, useState } from 'react';

/** Fields of one subject under its name; what is rarely changed is folded, and a line tells what stands there. */
export function FieldGroup({
  title,
  told,
  isFolded = false,
  children,
}: {
  title: string;
  /** The main fields of the group and what stands in them. */
  told?: string;
  /** Whether it is folded to begin with; from then on it is the user's to say. */
  isFolded?: boolean;
  children: ReactNode;
}) {
  const [folded] = useState(isFolded);
  return (
    <details className="field-group" open={!folded}>
      <summary>
        <h3>{title}</h3>
        {told && <span className="quiet small">{told}</span>}
      </summary>
      <div className="fields">{children}</div>
    </details>
  );
}
