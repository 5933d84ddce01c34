import { Suspense, useEffect, useRef, useState } from 'react';
import { settingsOf } from '../../src/model';
import { countOf } from '../../src/units';
import { part } from '../offline/part';
import { Button } from '../parts/Button';
import { useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { dayOf } from '../store/today';
import { openDialog, useView } from '../store/view';
import { useWords } from '../words';
import { calendarDay, clockTime } from '../words/format';

/** The rooms, and whether all is kept. */
export function Top() {
  const words = useWords();
  const room = useView((view) => view.room);
  const current = (name: typeof room) => (room === name ? 'page' : undefined);
  const nav = useRef<HTMLElement>(null);
  // On a phone the rooms are wider than the screen and scroll; the one that is open is in view.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the room decides which link is the current one
  useEffect(() => {
    nav.current?.querySelector('[aria-current]')?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [room]);
  return (
    <header className="top">
      <div className="brand">
        <img src="./icon.svg" alt="" />
        <span>{words.name}</span>
      </div>
      <nav ref={nav} aria-label={words.rooms.label}>
        <a href="#/orders" aria-current={current('orders') ?? current('quote')}>
          {words.rooms.orders}
        </a>
        <a href="#/film" aria-current={current('film')}>
          {words.rooms.film}
        </a>
        <a href="#/cut" aria-current={current('cut') ?? current('cut-map')}>
          {words.rooms.cut}
        </a>
        <a href="#/press" aria-current={current('press') ?? current('cards')}>
          {words.rooms.press}
        </a>
        <a href="#/stock" aria-current={current('stock')}>
          {words.rooms.stock}
        </a>
        <a href="#/log" aria-current={current('log')}>
          {words.rooms.log}
        </a>
      </nav>
      <div className="top-end">
        {/* Its words change with every edit: the button stands behind them, where it does not move. */}
        <Kept />
        <ShopButton />
      </div>
    </header>
  );
}

const fetchMenu = () => import('./ShopMenu').then(({ ShopMenu: menu }) => menu);
const ShopMenu = part(fetchMenu);

/** Opens what is set and kept for the whole shop. */
function ShopButton() {
  const { shop: words } = useWords();
  const [isOpen, setOpen] = useState(false);
  const place = useRef<HTMLDivElement>(null);
  return (
    <div ref={place}>
      <Button weight="plain" aria-expanded={isOpen} onPress={() => setOpen(!isOpen)}>
        {words.menu}
      </Button>
      {isOpen && (
        <Suspense>
          <ShopMenu place={place} onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </div>
  );
}

/** Milliseconds from which on saving is told: what is kept at once need not flicker with every edit. */
const TOLD = 800;

/** How far saving is, and what is told of it: the last that was kept, unless it takes its time. */
function useSaving() {
  const saving = useShop((shop) => shop.saving);
  const [told, setTold] = useState(saving);
  const settled = saving.kind === 'saving' ? null : saving;
  useEffect(() => {
    if (settled) return setTold(settled);
    const timer = setTimeout(() => setTold({ kind: 'saving' }), TOLD);
    return () => clearTimeout(timer);
  }, [settled]);
  return { saving, told };
}

function Kept() {
  const { kept } = useWords();
  const ways = useWays();
  const { saving, told } = useSaving();
  const open = useShop((shop) => shop.phase.kind === 'open');
  const backup = useShop(({ source, book }) =>
    source === 'shop' && countOf(book.order) > 0 ? (settingsOf(book)?.lastBackup ?? 'none') : null,
  );
  if (!open) return null;
  return (
    <div className="kept small" data-testid="kept" data-saving={saving.kind}>
      <Button weight="plain" onPress={() => openDialog({ kind: 'keep' })}>
        {told.kind === 'saved' && kept.saved(clockTime(told.at, ways))}
        {told.kind === 'saving' && kept.saving}
        {told.kind === 'failed' && <span className="error">{kept.failed}</span>}
        {told.kind === 'saved' && backup !== null && (
          <span className="backup">
            {' · '}
            {backup === 'none' ? kept.noBackup : kept.backup(calendarDay(dayOf(backup), ways))}
          </span>
        )}
      </Button>
    </div>
  );
}
