import { lazy, Suspense } from 'react';
import { FilmRoom } from '../film/FilmRoom';
import { OrdersRoom } from '../orders/OrdersRoom';
import { useShop } from '../store/shop';
import { useView } from '../store/view';
import { Bands } from './Bands';
import { Notices } from './Notices';
import { Top } from './Top';
import './shell.css';
import { useWords } from '../words';

const CutMapRoom = lazy(() =>
  import('../cut-map/CutMapRoom').then(({ CutMapRoom: room }) => ({ default: room })),
);
const CutRoom = lazy(() => import('../cut/CutRoom').then(({ CutRoom: room }) => ({ default: room })));
const PressRoom = lazy(() => import('../press/PressRoom').then(({ PressRoom: room }) => ({ default: room })));
const QuoteRoom = lazy(() =>
  import('../pricing/QuoteRoom').then(({ QuoteRoom: room }) => ({ default: room })),
);
const CardsRoom = lazy(() => import('../press/CardsRoom').then(({ CardsRoom: room }) => ({ default: room })));
const LogRoom = lazy(() => import('../log/LogRoom').then(({ LogRoom: room }) => ({ default: room })));
const StockRoom = lazy(() => import('../stock/StockRoom').then(({ StockRoom: room }) => ({ default: room })));
const Dialogs = lazy(() => import('./Dialogs').then(({ Dialogs: dialogs }) => ({ default: dialogs })));

export function App() {
  const words = useWords();
  const phase = useShop((shop) => shop.phase.kind);
  const room = useView((view) => view.room);
  const anyDialog = useView((view) => view.dialog !== null);
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
