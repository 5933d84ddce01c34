import { Suspense, useEffect } from 'react';
import { countOf } from '../../src/units';
import {
  cutMapCommand,
  layOutCommand,
  placeWaitingCommand,
  printImageCommand,
  redoCommand,
  undoCommand,
} from '../commands';
import { CommandButton } from '../commands/CommandButton';
import { part } from '../offline/part';
import { useNextAct } from '../panels/useNextAct';
import { useNarrow } from '../parts/useNarrow';
import { atRest } from '../store/at-rest';
import { useOffers } from '../store/offers';
import { useLaidRun } from '../store/selectors';
import { useShop } from '../store/shop';
import { useView } from '../store/view';
import { CopyTable } from './CopyTable';
import { FilmCanvas } from './canvas/FilmCanvas';
import { FilmBar } from './FilmBar';
import { LayoutProgress } from './LayoutProgress';
import { OrderCards } from './OrderCards';
import { RunBar } from './RunBar';
import { RunSentence } from './RunSentence';
import { RunStrip } from './RunStrip';
import './film.css';
import { useWords } from '../words';

const fetchSheet = () => import('./SelectionSheet').then(({ SelectionSheet: sheet }) => sheet);
const SelectionSheet = part(fetchSheet);
const Offer = part(() => import('./Offer').then(({ Offer: offer }) => offer));
const NoOrders = part(() => import('./NoOrders').then(({ NoOrders: none }) => none));
const NoRun = part(() => import('../panels/NoRun').then(({ NoRun: none }) => none));

/** The heart: the run in a sentence, the film across the screen, the whole run under it, the orders below. */
export function FilmRoom() {
  const { film: words } = useWords();
  const run = useLaidRun();
  const narrow = useNarrow();
  const next = useNextAct(run);
  // At hand before a copy is selected: the next key may be for it.
  useEffect(
    () =>
      void atRest()
        .then(fetchSheet)
        .catch(() => undefined),
    [],
  );
  const isSelected = useView(({ selected }) => selected.size > 0);
  const isOffered = useOffers((state) => state.offer !== null);
  const anyTransfers = useShop(({ book }) => countOf(book.transfer) > 0);
  if (!run)
    return (
      <Suspense>
        <NoRun title={words.title} />
      </Suspense>
    );
  if (!anyTransfers) {
    return (
      <Suspense>
        <NoOrders />
      </Suspense>
    );
  }
  const acts = (
    <div className="run-acts">
      <LayoutProgress />
      <div className="actions">
        <CommandButton command={undoCommand} weight="plain" />
        <CommandButton command={redoCommand} weight="plain" />
        <CommandButton command={cutMapCommand} />
        <CommandButton command={printImageCommand} weight={next === 'print' ? 'primary' : 'normal'} />
        {run.state === 'draft' && (
          <>
            <CommandButton command={placeWaitingCommand} />
            <CommandButton command={layOutCommand} weight={next === 'lay-out' ? 'primary' : 'normal'} />
          </>
        )}
      </div>
    </div>
  );
  // On a narrow screen the film comes before what is done with it, so that it is seen at first sight.
  return (
    <>
      <h1 className="visually-hidden">{words.title}</h1>
      {!narrow && <RunBar run={run} next={next} />}
      <section className="run-head">
        <RunSentence run={run} />
        {!narrow && acts}
      </section>
      <FilmCanvas run={run} />
      {isSelected && (
        <Suspense>
          <SelectionSheet run={run} />
        </Suspense>
      )}
      <RunStrip run={run} />
      {narrow && acts}
      {narrow && <RunBar run={run} next={next} />}
      {isOffered && (
        <Suspense>
          <Offer run={run} />
        </Suspense>
      )}
      <FilmBar run={run} />
      <OrderCards run={run} />
      <CopyTable run={run} />
    </>
  );
}
