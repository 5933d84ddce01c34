import { lazy, Suspense } from 'react';
import { FilmDialog } from '../film/FilmDialog';
import { FilmRoom } from '../film/FilmRoom';
import { PrintedDialog, SpoiledDialog } from '../film/ProgressDialogs';
import { RunDialog } from '../film/RunDialog';
import { OrdersRoom } from '../orders/OrdersRoom';
import { PasteDialog } from '../orders/PasteDialog';
import { useShop } from '../store/shop';
import { useView } from '../store/view';
import { useWords } from '../words';
import { Bands } from './Bands';
import { KeysDialog } from './KeysDialog';
import { Notices } from './Notices';
import { Top } from './Top';
import './shell.css';

const CutMapRoom = lazy(() =>
  import('../cut-map/CutMapRoom').then(({ CutMapRoom: room }) => ({ default: room })),
);

export function App() {
  const words = useWords();
  const phase = useShop((shop) => shop.phase.kind);
  const room = useView((view) => view.room);
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
        {phase === 'open' && room === 'cut-map' && (
          <Suspense>
            <CutMapRoom />
          </Suspense>
        )}
      </main>
      {phase === 'open' && <Dialogs />}
      <Notices />
    </>
  );
}

function Dialogs() {
  const dialog = useView((view) => view.dialog);
  switch (dialog?.kind) {
    case 'paste':
      return <PasteDialog text={dialog.text} />;
    case 'film':
      return <FilmDialog />;
    case 'run':
      return <RunDialog />;
    case 'printed':
      return <PrintedDialog />;
    case 'spoiled':
      return <SpoiledDialog />;
    case 'keys':
      return <KeysDialog />;
    case undefined:
      return null;
  }
}
