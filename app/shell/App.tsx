import { type ComponentType, Suspense, useEffect } from 'react';
import { FilmRoom } from '../film/FilmRoom';
import { part } from '../offline/part';
import { Held } from '../parts/held';
import { useShop } from '../store/shop';
import { openDialog, type Room, useView } from '../store/view';
import { Bands } from './Bands';
import { Boundary } from './Boundary';
import { FOLLOWS } from './follows';
import { Notices } from './Notices';
import { Top } from './Top';
import './shell.css';
import { useWords } from '../words';

const OrdersRoom = part(() => import('../orders/OrdersRoom').then(({ OrdersRoom: room }) => room));
const CutMapRoom = part(() => import('../cut-map/CutMapRoom').then(({ CutMapRoom: room }) => room));
const CutRoom = part(() => import('../cut/CutRoom').then(({ CutRoom: room }) => room));
const PressRoom = part(() => import('../press/PressRoom').then(({ PressRoom: room }) => room));
const QuoteRoom = part(() => import('../pricing/QuoteRoom').then(({ QuoteRoom: room }) => room));
const CardsRoom = part(() => import('../press/CardsRoom').then(({ CardsRoom: room }) => room));
const LogRoom = part(() => import('../log/LogRoom').then(({ LogRoom: room }) => room));
const StockRoom = part(() => import('../stock/StockRoom').then(({ StockRoom: room }) => room));
const Dialogs = part(() => import('./Dialogs').then(({ Dialogs: dialogs }) => dialogs));

const rooms: Readonly<Record<Room, ComponentType & { readonly ahead?: () => void }>> = {
  orders: OrdersRoom,
  film: FilmRoom,
  cut: CutRoom,
  'cut-map': CutMapRoom,
  press: PressRoom,
  cards: CardsRoom,
  stock: StockRoom,
  log: LogRoom,
  quote: QuoteRoom,
};

export function App() {
  const words = useWords();
  const phase = useShop((shop) => shop.phase.kind);
  const room = useView((view) => view.room);
  const dialog = useView((view) => view.dialog?.kind);
  const follows = useShop((shop) => shop.follows);
  const Shown = rooms[room];
  useEffect(() => {
    // While the book is read.
    if (phase === 'opening') Shown.ahead?.();
  }, [Shown, phase]);
  return (
    <Held value={follows ? FOLLOWS : null}>
      <a className="skip" href="#work">
        {words.skip}
      </a>
      <Top />
      <Bands />
      {/* Another once the book is open: bands come above it then, and nothing that was shown is pushed down. */}
      <main key={phase} id="work" tabIndex={-1}>
        {phase === 'opening' && <p className="opening quiet">{words.storage.opening}</p>}
        {phase === 'open' && (
          <Boundary key={room} what="room">
            <Suspense>
              <Shown />
            </Suspense>
          </Boundary>
        )}
      </main>
      {phase === 'open' && dialog && (
        <Boundary key={dialog} what="window" close={() => openDialog(null)}>
          <Suspense>
            <Dialogs />
          </Suspense>
        </Boundary>
      )}
      <Notices />
    </Held>
  );
}
