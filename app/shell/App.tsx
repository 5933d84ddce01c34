import { lazy, Suspense, useEffect } from 'react';
import { FilmRoom } from '../film/FilmRoom';
import { OrdersRoom } from '../orders/OrdersRoom';
import { useShop } from '../store/shop';
import { useView } from '../store/view';
import { Bands } from './Bands';
import { Notices } from './Notices';
import { Top } from './Top';
import './shell.css';
import { useWords } from '../words';

const rooms = {
  cut: () => import('../cut/CutRoom'),
  cutMap: () => import('../cut-map/CutMapRoom'),
  press: () => import('../press/PressRoom'),
  cards: () => import('../press/CardsRoom'),
  stock: () => import('../stock/StockRoom'),
  log: () => import('../log/LogRoom'),
  quote: () => import('../pricing/QuoteRoom'),
  dialogs: () => import('./Dialogs'),
};

const CutRoom = lazy(() => rooms.cut().then(({ CutRoom: room }) => ({ default: room })));
const CutMapRoom = lazy(() => rooms.cutMap().then(({ CutMapRoom: room }) => ({ default: room })));
const PressRoom = lazy(() => rooms.press().then(({ PressRoom: room }) => ({ default: room })));
const CardsRoom = lazy(() => rooms.cards().then(({ CardsRoom: room }) => ({ default: room })));
const StockRoom = lazy(() => rooms.stock().then(({ StockRoom: room }) => ({ default: room })));
const LogRoom = lazy(() => rooms.log().then(({ LogRoom: room }) => ({ default: room })));
const QuoteRoom = lazy(() => rooms.quote().then(({ QuoteRoom: room }) => ({ default: room })));
const Dialogs = lazy(() => rooms.dialogs().then(({ Dialogs: dialogs }) => ({ default: dialogs })));

/** How long the first room has been open before the code of the others is fetched, in milliseconds. */
const SETTLED = 3000;

/** Fetches the code of the rooms one by one while the first is looked at: the first look into another waits for none. */
function useRoomsAhead(isOpen: boolean): void {
  useEffect(() => {
    if (!isOpen) return;
    const timer = setTimeout(async () => {
      // A room whose code cannot be had is asked for again when it is opened.
      for (const fetchRoom of Object.values(rooms)) await fetchRoom().catch(() => undefined);
    }, SETTLED);
    return () => clearTimeout(timer);
  }, [isOpen]);
}

export function App() {
  const words = useWords();
  const phase = useShop((shop) => shop.phase.kind);
  const room = useView((view) => view.room);
  const anyDialog = useView((view) => view.dialog !== null);
  useRoomsAhead(phase === 'open');
  return (
    <>
      <a className="skip" href="#work">
        {words.skip}
      </a>
      <Top />
      <Bands />
      <main id="work" tabIndex={-1}>
        {phase === 'opening' && <p className="opening quiet">{words.storage.opening}</p>}
        {phase === 'open' && room === 'orders' && <OrdersRoom />}
        {phase === 'open' && room === 'film' && <FilmRoom />}
        {phase === 'open' && (
          <Suspense>
            {room === 'cut' && <CutRoom />}
            {room === 'cut-map' && <CutMapRoom />}
            {room === 'press' && <PressRoom />}
            {room === 'cards' && <CardsRoom />}
            {room === 'stock' && <StockRoom />}
            {room === 'log' && <LogRoom />}
            {room === 'quote' && <QuoteRoom />}
          </Suspense>
        )}
      </main>
      {phase === 'open' && anyDialog && (
        <Suspense>
          <Dialogs />
        </Suspense>
      )}
      <Notices />
    </>
  );
}
