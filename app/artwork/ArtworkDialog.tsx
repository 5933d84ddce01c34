import { useEffect, useRef, useState } from 'react';
import { type Finding, isMeant, meantSo, verdictOn } from '../../src/artwork';
import { edits } from '../../src/editing';
import type { Artwork, Mend, Transfer } from '../../src/model';
import { ShadeChoice } from '../panels/ShadeChoice';
import { Button } from '../parts/Button';
import { GradeMark } from '../parts/GradeMark';
import { checkAgain, findingsFor, stopCheck, useCheck } from '../store/checks';
import { settingsOrFirst, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { CloseButton } from '../windows/CloseButton';
import { Window } from '../windows/Window';
import { percent } from '../words/format';
import { FindingList } from './FindingList';
import { LimitsForm } from './LimitsForm';
import { Measures } from './Measures';
import { MendForm } from './MendForm';
import { marksOf } from './marks';
import { PdfPage } from './PdfPage';
import { type Layer, PrintPicture } from './PrintPicture';
import { sizeWith } from './take-mended';
import { useArtworkPicture } from './useArtworkPicture';
import './artwork.css';
import { useAllWords } from '../words';

/** A transfer's artwork on its garment's colour: what was found, where, and what to do about it. */
export function ArtworkDialog({ id }: { id: string }) {
  const { artwork: words } = useAllWords();
  const transfer = useShop(({ book }) => book.transfer[id]);
  const artwork = useShop(({ book }) => (transfer?.artwork ? book.artwork[transfer.artwork] : undefined));
  if (!transfer || !artwork) return null;
  return (
    <Window title={words.title(transfer.name)} wide>
      <Looked key={artwork.id} transfer={transfer} artwork={artwork} />
      <div className="actions">
        <CloseButton />
      </div>
    </Window>
  );
}

function Looked({ transfer, artwork }: { transfer: Transfer; artwork: Artwork }) {
  const { artwork: words } = useAllWords();
  const ways = useWays();
  const limits = useShop(({ book }) => settingsOrFirst(book).limits);
  const state = useCheck(transfer);
  const [chosen, setChosen] = useState<Finding['code'] | 'none' | null>(null);
  const [mend, setMend] = useState<Mend | null>(null);
  const [layer, setLayer] = useState<Layer>('print');
  const { picture, ink } = useArtworkPicture(
    transfer,
    artwork,
    mend,
    layer === 'white' ? limits.choke : null,
  );
  const check = state?.kind === 'done' ? state.check : null;
  const findings = check ? findingsFor(check, transfer, limits) : [];
  // The worst that has places is shown until another is chosen.
  const shown = chosen ?? findings.find(({ code }) => check && marksOf(check, code, limits))?.code ?? 'none';
  const told = useRef<HTMLDivElement>(null);
  // A form that closes takes the focus with it; it must stay in the window, for Escape to close that.
  useEffect(() => {
    if (mend === null && document.activeElement === document.body) told.current?.focus();
  }, [mend]);
  return (
    <div className="artwork-window">
      <PrintPicture
        name={transfer.name}
        picture={picture}
        shade={transfer.shade}
        layer={layer}
        onLayer={setLayer}
        choke={limits.choke}
        marks={check && !mend && layer === 'print' && shown !== 'none' ? marksOf(check, shown, limits) : null}
      />
      <div className="artwork-told" ref={told} tabIndex={-1}>
        {mend ? (
          <MendForm
            transfer={transfer}
            artwork={artwork}
            mend={mend}
            ink={ink}
            onChange={setMend}
            onClose={() => setMend(null)}
          />
        ) : (
          <section aria-labelledby="found">
            <div className="found-head">
              <h3 id="found">{words.findings}</h3>
              {check && <GradeMark grade={verdictOn(findings, transfer)} />}
            </div>
            {state?.kind === 'running' && (
              <p className="quiet">
                <span role="status">{words.checking(percent(state.share, ways))}</span>{' '}
                <Button weight="plain" onPress={stopCheck}>
                  {words.stop}
                </Button>
              </p>
            )}
            {state?.kind === 'waiting' && <p className="quiet">{words.loading}</p>}
            {state?.kind === 'stopped' && (
              <p className="quiet">
                {words.stopped}{' '}
                <Button weight="plain" onPress={() => checkAgain(transfer)}>
                  {words.again}
                </Button>
              </p>
            )}
            {state?.kind === 'failed' && <p className="error">{words.pictureMissing}</p>}
            {check && (
              <FindingList
                check={check}
                findings={findings}
                limits={limits}
                kind={artwork.kind}
                shown={shown}
                onShow={setChosen}
                onMend={setMend}
                meant={(finding) => isMeant(finding, transfer)}
                onMeant={(finding, meant) =>
                  act(
                    meant
                      ? edits.setMeant(transfer.id, meantSo(finding, artwork.id))
                      : edits.clearMeant(transfer.id, finding.code),
                  )
                }
              />
            )}
            <MadeFrom transfer={transfer} artwork={artwork} />
          </section>
        )}
        {artwork.kind === 'pdf' && <PdfPage transfer={transfer} artwork={artwork} />}
        <ShadeChoice transfer={transfer} />
        {check && <Measures check={check} transfer={transfer} />}
        <LimitsForm limits={limits} />
      </div>
    </div>
  );
}

/** The way back from an image that was made here. */
function MadeFrom({ transfer, artwork }: { transfer: Transfer; artwork: Artwork }) {
  const { mends: words } = useAllWords();
  const ways = useWays();
  const { madeFrom } = artwork;
  const first = useShop(({ book }) => (madeFrom ? book.artwork[madeFrom.artwork] : undefined));
  if (!madeFrom || !first) return null;
  return (
    <p className="quiet">
      {words.madeFrom(madeFrom.by, ways)}{' '}
      <Button
        writes
        weight="plain"
        onPress={() => act(edits.setMadeArtwork(transfer.id, first, sizeWith(transfer, artwork, first)))}
      >
        {words.backToFirst}
      </Button>
    </p>
  );
}
