import type { ReactNode } from 'react';
import './empty.css';

/** A room, or a part of one, that has nothing to show yet: one drawing, what is missing, and one act that leads on. */
export function Empty({
  title,
  isPart = false,
  children,
}: {
  title?: string;
  /** It stands below the title of its room. */
  isPart?: boolean;
  children: ReactNode;
}) {
  return (
    <section className="empty">
      <BareFilm />
      {title !== undefined && (isPart ? <h2>{title}</h2> : <h1>{title}</h1>)}
      {children}
    </section>
  );
}

/** A roll, and of its film a stretch with places where nothing lies. */
const BareFilm = () => (
  <svg viewBox="0 0 240 96" width="240" height="96" aria-hidden="true" className="bare-film">
    <path className="film" d="M32 18h196v60H32z" />
    <path
      className="places"
      d="M76 28h40v40H76zM126 28h28v18h-28zM126 54h60v14h-60zM164 28h22v18h-22zM198 28h20v40h-20z"
    />
    <path className="roll" d="M28 10h16a20 38 0 0 1 0 76H28z" />
    <ellipse className="end" cx="28" cy="48" rx="20" ry="38" />
    <ellipse className="core" cx="28" cy="48" rx="7" ry="14" />
  </svg>
);
