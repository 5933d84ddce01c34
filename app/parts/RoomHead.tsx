import type { ReactNode } from 'react';
import { useNarrow } from './useNarrow';

/** A room's name and what is done in all of it; on a narrow screen folded away, since the work at hand comes first there. */
export function RoomHead({
  title,
  told,
  children,
}: {
  title: string;
  /** What is worked on, for the folded line. */
  told: string;
  children: ReactNode;
}) {
  const narrow = useNarrow();
  const acts = <div className="actions">{children}</div>;
  if (!narrow) {
    return (
      <div className="room-head">
        <h1>{title}</h1>
        {acts}
      </div>
    );
  }
  return (
    <details className="folded-head">
      <summary>
        <h1>{title}</h1> {told}
      </summary>
      {acts}
    </details>
  );
}
