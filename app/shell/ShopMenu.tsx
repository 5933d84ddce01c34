import type { RefObject } from 'react';
import { Menu, MenuItem, Popover } from 'react-aria-components';
import { useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { type Dialog, openDialog } from '../store/view';
import { languageNames, useAllWords, useLanguage } from '../words';
import './shop-menu.css';

/** What is set and kept for the whole shop, each by the title of its window. */
export function ShopMenu({ place, onClose }: { place: RefObject<HTMLElement | null>; onClose: () => void }) {
  const words = useAllWords();
  const { unit } = useWays();
  const language = useLanguage();
  const anyRun = useShop(({ book }) => Object.keys(book.run).length > 0);
  const items: readonly { readonly opens: Dialog; readonly label: string; readonly told?: string }[] = [
    // The language calls itself by its own name: it is found by those who cannot read the others.
    { opens: { kind: 'shop' }, label: words.shop.title, told: `${languageNames[language]} · ${unit}` },
    { opens: { kind: 'costs', back: null }, label: words.costsForm.title },
    { opens: { kind: 'prices', back: null }, label: words.prices.title },
    ...(anyRun ? [{ opens: { kind: 'film' } as const, label: words.filmForm.title }] : []),
    { opens: { kind: 'station' }, label: words.station.title },
    { opens: { kind: 'recipes' }, label: words.recipeForm.title },
    { opens: { kind: 'upkeep' }, label: words.upkeep.title },
    { opens: { kind: 'keep' }, label: words.keep.title },
    { opens: { kind: 'keys' }, label: words.keys.title },
  ];
  return (
    <Popover
      className="shop-menu"
      triggerRef={place}
      isOpen
      placement="bottom end"
      onOpenChange={(open) => !open && onClose()}
    >
      <Menu aria-label={words.shop.menu} autoFocus="first" onClose={onClose}>
        {items.map(({ opens, label, told }) => (
          <MenuItem key={opens.kind} id={opens.kind} textValue={label} onAction={() => openDialog(opens)}>
            <span>{label}</span>
            {told && <span className="quiet small">{told}</span>}
          </MenuItem>
        ))}
      </Menu>
    </Popover>
  );
}
