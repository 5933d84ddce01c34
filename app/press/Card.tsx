import type { ReactNode } from 'react';

/** A card as it is printed: where it takes several pages, each has its head and a number. */
export function Card({
  paper,
  title,
  facts = null,
  children,
}: {
  /** The name of a page of `paper.css`. */
  paper: string;
  title: ReactNode;
  /** At the right of the title. */
  facts?: ReactNode;
  children: ReactNode;
}) {
  return (
    <article className="card-page flows" data-paper={paper}>
      <div className="card-title">
        <header className="card-head">
          <h2>{title}</h2>
          {facts}
        </header>
      </div>
      <div className="card-body">
        <div className="card-flow">{children}</div>
      </div>
    </article>
  );
}
