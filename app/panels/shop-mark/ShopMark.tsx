import { useEffect, useState } from 'react';
import { freeLater } from '../../files/object-url';
import { settingsOrFirst } from '../../store/selectors';
import { useShop } from '../../store/shop';
import { initialsOf } from './initials';
import { markFile } from './mark-file';
import './shop-mark.css';

/** The shop's mark as a picture; nothing where there is none. */
export function MarkPicture({ mark }: { mark: string | null }) {
  const [source, setSource] = useState<string | null>(null);
  useEffect(() => {
    if (mark === null) return setSource(null);
    const url = URL.createObjectURL(markFile(mark));
    setSource(url);
    return () => freeLater(url);
  }, [mark]);
  return source && <img className="shop-picture" src={source} alt="" />;
}

/** The shop's name behind its mark, or behind one made of it: its initials on the end of a roll. */
export function ShopMark() {
  const { mark, letterhead } = useShop(({ book }) => settingsOrFirst(book));
  const { name } = letterhead;
  if (name === '' && mark === null) return null;
  return (
    <p className="shop">
      {mark === null ? (
        <svg viewBox="0 0 40 40" aria-hidden="true">
          <path d="M20 1a19 19 0 1 0 0 38h19v-6H32.7A19 19 0 0 0 20 1z" />
          <text x="20" y="20" textAnchor="middle" dominantBaseline="central">
            {initialsOf(name)}
          </text>
        </svg>
      ) : (
        <MarkPicture mark={mark} />
      )}
      {name}
    </p>
  );
}
