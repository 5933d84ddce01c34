import { useEffect, useMemo, useState } from 'react';
import { Label, ProgressBar } from 'react-aria-components';
import { editSettings } from '../../src/editing';
import type { LaidRun } from '../../src/layout';
import type { Settings } from '../../src/model';
import { framesBySpan, framesOf, imageOf, PPI, type Scope } from '../../src/output/print-image';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Field } from '../parts/Field';
import { safeName } from '../parts/file-name';
import { Tick } from '../parts/Tick';
import { Window } from '../parts/Window';
import { settingsOrFirst, useLaidRun, useWays } from '../store/selectors';
import { commitQuietly, useShop } from '../store/shop';
import { openDialog, useView } from '../store/view';
import { useWords } from '../words';
import { area } from '../words/format';
import { printImageWords as words } from '../words/print-image';
import { type NamedImage, printImages, sweepImages, usePrinting } from './printing';
import { bytesOf, type Sources, useSources } from './sources';
import './print-image.css';

/** Writes what the printer's software takes: says what will be written, and how far it is. */
export function PrintImageDialog() {
  const run = useLaidRun();
  const { printing } = usePrinting();
  useEffect(sweepImages, []);
  if (!run) return null;
  return (
    <Window title={words.title}>
      {printing.kind === 'writing' ? <Writing {...printing} /> : <Choosing run={run} />}
    </Window>
  );
}

function Writing({ share, stop }: { share: number; stop: () => void }) {
  const { common } = useWords();
  const ways = useWays();
  return (
    <>
      <ProgressBar className="image-progress" value={share * 100}>
        <Label>{words.writing}</Label>
        <span>{words.share(share, ways)}</span>
        <div className="bar">
          <div className="fill" style={{ width: `${share * 100}%` }} />
        </div>
      </ProgressBar>
      <p className="quiet">{words.goesOn}</p>
      <div className="actions">
        <Button onPress={stop}>{words.stop}</Button>
        <Button weight="primary" onPress={() => openDialog(null)}>
          {common.close}
        </Button>
      </div>
    </>
  );
}

/** The scopes that a run offers, by a key that a list can hold. */
function useScopes(run: LaidRun): Map<string, { scope: Scope; label: string }> {
  const ways = useWays();
  const selected = useView((view) => view.selected);
  return useMemo(() => {
    const spans = framesBySpan(run);
    const chosen = run.copies.filter(({ id }) => selected.has(id)).length;
    const onSheets = run.film.kind === 'sheets';
    const isRest = run.state !== 'printed' && run.printedTo > 0;
    const scopes = new Map<string, { scope: Scope; label: string }>();
    const whole = isRest ? words.whats.rest : words.whats.run;
    scopes.set('run', {
      scope: { kind: 'run' },
      label: onSheets ? words.whats.sheets(spans.length, ways) : whole,
    });
    if (chosen > 0) {
      scopes.set('chosen', {
        scope: { kind: 'chosen', copies: selected },
        label: words.whats.chosen(chosen, ways),
      });
    }
    if (spans.length < 2) return scopes;
    if (!onSheets) {
      scopes.set('spans', { scope: { kind: 'spans' }, label: words.whats.spans(spans.length, ways) });
    }
    for (const { part } of spans) {
      if (!('number' in part)) continue;
      scopes.set(String(part.number), {
        scope: { kind: 'span', number: part.number },
        label: words.whats[part.kind](part.number),
      });
    }
    return scopes;
  }, [run, selected, ways]);
}

function Choosing({ run }: { run: LaidRun }) {
  const { common } = useWords();
  const ways = useWays();
  const artwork = useShop(({ book }) => book.artwork);
  const settings = useShop(({ book }) => settingsOrFirst(book));
  const { printer, printImage } = settings;
  const [chosen, setChosen] = useState('run');
  const [ppi, setPpi] = useState(String(printImage.ppi));
  const [blank, setBlank] = useState(false);
  const scopes = useScopes(run);
  const { scope } = scopes.get(chosen) ?? { scope: { kind: 'run' } };
  const set = (fields: Partial<Settings['printImage']>) =>
    commitQuietly((draft) => editSettings(draft, { printImage: { ...printImage, ...fields } }));
  const read = /^\s*\d{1,4}\s*$/.test(ppi) ? Number(ppi) : 0;
  const isPpi = read >= PPI.least && read <= PPI.most;
  const images = useMemo((): NamedImage[] => {
    const { mirrored, ticks, numbers } = printImage;
    const choice = {
      ppi: printImage.ppi,
      mirrored,
      firstEnd: printer.firstEnd,
      marks: { ticks, numbers },
    };
    return framesOf(run, scope).map((frame) => ({
      image: imageOf(run, frame, choice),
      name: safeName(words.fileName(run.name, frame.part, 'png')),
    }));
  }, [run, scope, printImage, printer]);
  const shown = useMemo(() => {
    const copies = new Set(images.flatMap(({ image }) => image.copies.map(({ copy }) => copy)));
    return run.copies.filter(({ id }) => copies.has(id));
  }, [run, images]);
  const ids = [...new Set(shown.flatMap(({ transfer }) => transfer.artwork ?? []))];
  const sources = useSources(artwork, ids);
  const named = (without: (artworkId: string | null) => boolean) => [
    ...new Set(
      shown
        .filter(({ transfer }) => without(transfer.artwork))
        .map(({ order, transfer }) => `${order.code} ${transfer.name}`),
    ),
  ];
  const bare = named((id) => id === null);
  const lost = sources ? named((id) => id !== null && !sources.has(id)) : [];
  const unnumbered = images.reduce((sum, { image }) => sum + image.unnumbered, 0);
  const readsInkUp = (printer.inkUp === 'mirrored') === printImage.mirrored;
  const ready = sources !== null && isPpi && images.length > 0;
  return (
    <>
      <div className="fields">
        <Choice
          label={words.what}
          value={scopes.has(chosen) ? chosen : 'run'}
          options={[...scopes].map(([value, { label }]) => ({ value, label }))}
          onChange={setChosen}
        />
        <Field
          label={words.ppi}
          hint={words.ppiHint}
          value={ppi}
          inputMode="decimal"
          onChange={(typed) => {
            setPpi(typed);
            const value = Number(typed);
            if (Number.isInteger(value) && value >= PPI.least && value <= PPI.most) set({ ppi: value });
          }}
          problem={isPpi ? null : words.ppiProblem(PPI.least, PPI.most)}
        />
      </div>
      <div>
        <Tick label={words.mirror} checked={printImage.mirrored} onChange={(mirrored) => set({ mirrored })} />
        <p className="hint">{words.mirrorHint}</p>
        {readsInkUp && <p className="care small">{words.wouldRead}</p>}
        {printer.firstEnd === 'tail' && <p className="quiet small">{words.turnedRound}</p>}
      </div>
      <fieldset className="image-marks">
        <legend>{words.marks}</legend>
        <Tick label={words.ticks} checked={printImage.ticks} onChange={(ticks) => set({ ticks })} />
        <Tick label={words.numbers} checked={printImage.numbers} onChange={(numbers) => set({ numbers })} />
        <p className="hint">{words.marksHint}</p>
        {unnumbered > 0 && <p className="care small">{words.unnumbered(unnumbered, ways)}</p>}
      </fieldset>
      <Outcome images={images} sources={sources} />
      {(bare.length > 0 || lost.length > 0) && (
        <div className="image-missing">
          {bare.length > 0 && <p className="care">{words.noArtwork(bare.join(', '))}</p>}
          {lost.length > 0 && <p className="care">{words.lostArtwork(lost.join(', '))}</p>}
          <Tick label={words.leaveBlank} checked={blank} onChange={setBlank} />
        </div>
      )}
      <p className="quiet small">{words.ink}</p>
      <div className="actions">
        <Button onPress={() => openDialog(null)}>{common.cancel}</Button>
        <Button
          weight="primary"
          isDisabled={!ready || (!blank && (bare.length > 0 || lost.length > 0))}
          onPress={() => void printImages(images, [...(sources?.values() ?? [])])}
        >
          {images.length > 1 ? words.writeAll(images.length, ways) : words.write}
        </Button>
      </div>
    </>
  );
}

/** Files that are named one by one; of more the rest is counted. */
const LISTED = 4;

/** The files that will be written, how large they are on film and, about, on the disk. */
function Outcome({ images, sources }: { images: readonly NamedImage[]; sources: Sources }) {
  const ways = useWays();
  let bytes = 0;
  for (const { image } of images) {
    for (const { artwork, width, height } of image.copies) {
      const source = artwork === null ? undefined : sources?.get(artwork);
      if (source) bytes += bytesOf(source, width * height);
    }
  }
  return (
    <div className="image-files" role="status">
      <ul>
        {images.slice(0, LISTED).map(({ name, image }) => (
          <li key={name}>
            <strong>{name}</strong>{' '}
            <span className="quiet">
              {words.file(
                words.pixels(image.width, image.height, ways),
                area(image.film.width, image.film.length, ways),
              )}
            </span>
          </li>
        ))}
        {images.length > LISTED && <li className="quiet">{words.more(images.length - LISTED, ways)}</li>}
      </ul>
      <p className="quiet small">{sources === null ? words.loading : words.about(bytes, ways)}</p>
    </div>
  );
}
