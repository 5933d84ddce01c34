import { initialsOf } from './slips';

/** The shop's name behind a mark made of it: its initials on the end of a roll. */
export function ShopMark({ name }: { name: string }) {
  if (name === '') return null;
  return (
    <p className="shop">
      <svg viewBox="0 0 40 40" aria-hidden="true">
        <path d="M20 1a19 19 0 1 0 0 38h19v-6H32.7A19 19 0 0 0 20 1z" />
        <text x="20" y="20" textAnchor="middle" dominantBaseline="central">
          {initialsOf(name)}
        </text>
      </svg>
      {name}
    </p>
  );
}
