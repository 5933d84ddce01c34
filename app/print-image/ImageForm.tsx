import { useMemo, useState } from 'react';
import { edits } from '../../src/editing';
import type { LaidCopy, LaidRun } from '../../src/layout';
import { chosenFeed, isByOutlines, type Printer, type Settings, sendings } from '../../src/model';
import {
  fitsPdf,
  fitsTiff,
  framesOf,
  imageOf,
  LONGEST_PAGE,
  PPI,
  type PrintImage,
  type Scope,
} from '../../src/output/print-image';
import { wetWhenWhole } from '../../src/pressing';
import { fromMm } from '../../src/units';
import { safeName } from '../files/file-name';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { whole } from '../parts/fields/numbers';
import { Tick } from '../parts/Tick';
import { printerOfRun, settingsOrFirst, useOrdersOf, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { useAllWords } from '../words';
import { filmLength, finePercent, rulerLength, spoken, whole as wholeText } from '../words/format';
import { Outcome } from './Outcome';
import { type NamedImage, printImages } from './printing';
import { useScopes } from './scopes';
import { useSources } from './sources';
import { TypedField } from './TypedField';
import { White } from './White';

type Choices = Settings['printImage'];

/** The images that a scope takes, with the names of their files. */
function useImages(
  run: LaidRun,
  scope: Scope,
  { feed, printer }: { feed: number; printer: Printer },
  { printImage, limits }: Omit<Settings, 'changed'>,
) {
  const { printImage: words } = useAllWords();
  const orders = useOrdersOf(run);
  return useMemo((): NamedImage[] => {
    const { ppi, ticks, numbers, names, corners } = printImage;
    const choice = {
      ppi,
      mirrored: printer.mirrored,
      firstEnd: printer.firstEnd,
      feed,
      marks: {
        ticks,
        numbers,
        names: names ? (order: string) => orders[order]?.name ?? '' : null,
        corners,
      },
    };
    return framesOf(run, scope).map((frame) => {
      const image = imageOf(run, frame, choice);
      const form = FITS[printImage.form](image) ? printImage.form : 'png';
      const name = safeName(words.fileName(run.name, frame.part, form === 'tiff' ? 'tif' : form));
      const file = form === 'png' ? words.whiteFile(name) : null;
      const white = printImage.white ? { choke: limits.choke, name: printImage.whiteName, file } : null;
      return { image, form, name, white };
    });
  }, [run, orders, scope, feed, printer, printImage, limits, words]);
}

/** Whether an image is small enough for a form. */
const FITS: Readonly<Record<Choices['form'], (image: PrintImage) => boolean>> = {
  png: () => true,
  pdf: fitsPdf,
  tiff: fitsTiff,
};

const WHOLE_RUN: Scope = { kind: 'run' };

/** What is to be written and how; it says what comes of it before anything is written. */
export function ImageForm({ run }: { run: LaidRun }) {
  const { common, cutFile, printImage: words } = useAllWords();
  const ways = useWays();
  const artwork = useShop(({ book }) => book.artwork);
  const settings = useShop(({ book }) => settingsOrFirst(book));
  const { printImage } = settings;
  const printer = printerOfRun(run);
  const feed = chosenFeed(settings, printer);
  const [picked, setPicked] = useState<string | null>(null);
  const [blank, setBlank] = useState(false);
  const [unread, setUnread] = useState<ReadonlySet<'ppi' | 'choke' | 'name'>>(new Set());
  const scopes = useScopes(run);
  const usual = printer.sends === 'by-span' && scopes.has('spans') ? 'spans' : 'run';
  const chosen = picked !== null && scopes.has(picked) ? picked : usual;
  // Copies printed anew are a job of their own, with a film of their own; of a draft the image is still to come.
  const noted = chosen === 'chosen' || run.state === 'draft' ? null : { run: run.id, feed };
  const images = useImages(run, scopes.get(chosen)?.scope ?? WHOLE_RUN, { feed, printer }, settings);
  const shown = useMemo(() => {
    const copies = new Set(images.flatMap(({ image }) => image.copies.map(({ copy }) => copy)));
    return run.copies.filter(({ id }) => copies.has(id));
  }, [run, images]);
  const sources = useSources(artwork, [...new Set(shown.flatMap(({ transfer }) => transfer.artwork ?? []))]);
  const bare = named(shown, (id) => id === null);
  const lost = sources ? named(shown, (id) => id !== null && !sources.has(id)) : [];
  const setRead = (field: 'ppi' | 'choke' | 'name', isRead: boolean) =>
    setUnread((before) => {
      const after = new Set(before);
      if (isRead) after.delete(field);
      else after.add(field);
      return after;
    });
  const set = (fields: Partial<Choices>) =>
    act(edits.editSettings({ printImage: { ...printImage, ...fields } }));
  const files = images.reduce((sum, { white }) => sum + (white?.file ? 2 : 1), 0);
  const isWhole = bare.length === 0 && lost.length === 0;
  const ready = sources !== null && unread.size === 0 && images.length > 0 && (isWhole || blank);
  return (
    <>
      {run.film.kind === 'roll' && <Sending run={run} isWhole={chosen === 'run'} />}
      <div className="fields">
        <Choice
          label={words.what}
          value={chosen}
          options={[...scopes].map(([value, { label }]) => ({ value, label }))}
          onChange={setPicked}
        />
        <Choice
          writes
          label={words.form}
          value={printImage.form}
          options={[
            { value: 'png', label: words.forms.png },
            { value: 'pdf', label: words.forms.pdf },
            { value: 'tiff', label: words.forms.tiff },
          ]}
          onChange={(form) => {
            set({ form });
            setRead('name', true);
          }}
        />
        <TypedField
          label={words.ppi}
          hint={words.ppiHint}
          codec={pixelsAnInch}
          value={printImage.ppi}
          onValue={(ppi) => set({ ppi })}
          onRead={(isRead) => setRead('ppi', isRead)}
        />
        <Mirror printer={printer} />
        <Feed settings={settings} printer={printer} onFeed={(feedCorrected) => set({ feedCorrected })} />
      </div>
      {printImage.form !== 'png' && images.some(({ form }) => form === 'png') && (
        <p className="care small">{words.tooLarge[printImage.form](filmLength(LONGEST_PAGE, ways))}</p>
      )}
      <White settings={settings} onChange={set} onRead={setRead} />
      <Marks
        choices={printImage}
        unnumbered={images.reduce((sum, { image }) => sum + image.unnumbered, 0)}
        onChange={set}
      />
      <Outcome images={images} sources={sources} />
      {!isWhole && (
        <div className="image-missing">
          {bare.length > 0 && <p className="care">{words.noArtwork(bare.join(', '))}</p>}
          {lost.length > 0 && <p className="care">{words.lostArtwork(lost.join(', '))}</p>}
          <Tick label={words.leaveBlank} checked={blank} onChange={setBlank} />
        </div>
      )}
      <p className="quiet small">{printImage.white ? words.inkWithWhite : words.ink}</p>
      <div className="actions">
        {isByOutlines(run.view.run, run.film) && (
          <Button weight="plain" onPress={() => openDialog({ kind: 'cut-file' })}>
            {cutFile.title}
          </Button>
        )}
        <Button onPress={() => openDialog(null)}>{common.cancel}</Button>
        <Button
          weight="primary"
          writes={noted !== null}
          isDisabled={!ready}
          onPress={() => {
            if (!sources) return;
            void printImages(images, [...sources.values()], noted);
          }}
        >
          {files > 1 ? words.writeAll(files, ways) : words.write}
        </Button>
      </div>
    </>
  );
}

/** How runs reach the printer, asked until it is said; and how long the first ink of this one would lie wet. */
function Sending({ run, isWhole }: { run: LaidRun; isWhole: boolean }) {
  const { printImage: words, station: names } = useAllWords();
  const ways = useWays();
  const { station } = useShop(({ book }) => settingsOrFirst(book));
  const printer = printerOfRun(run);
  // What is answered stays in view until the window is left.
  const [isAsked] = useState(printer.sends === null || printer.feedsBack === null);
  const tell = (told: Partial<Pick<Printer, 'sends' | 'feedsBack'>>) =>
    act(edits.editPrinter(printer.id, told));
  const isLost = printer.feedsBack === false && run.film.kind === 'roll' && run.film.cutBlank === 0;
  const wet = wetWhenWhole(run, station);
  return (
    <>
      {isAsked && (
        <div className="fields">
          <Choice
            writes
            label={names.sends}
            value={printer.sends ?? 'untold'}
            options={(['untold', ...sendings] as const).map((value) => ({
              value,
              label: names.sendings[value],
            }))}
            onChange={(sends) => tell({ sends: sends === 'untold' ? null : sends })}
          />
          <Choice
            writes
            label={names.feedsBack}
            value={printer.feedsBack === null ? 'untold' : printer.feedsBack ? 'yes' : 'no'}
            options={(['untold', 'yes', 'no'] as const).map((value) => ({
              value,
              label: names.feedsBacks[value],
            }))}
            onChange={(told) => tell({ feedsBack: told === 'untold' ? null : told === 'yes' })}
          />
          <p className="hint">{words.askedOnce}</p>
        </div>
      )}
      {isLost && (run.spans?.length ?? 0) > 1 && <p className="care">{words.cutsLose}</p>}
      {isWhole && wet !== null && wet > station.wetLimit && (
        <p className="care">{words.liesWet(spoken(wet, ways), spoken(station.wetLimit, ways))}</p>
      )}
    </>
  );
}

/** The transfers of copies whose artwork is as told, each once. */
const named = (copies: readonly LaidCopy[], isSo: (artwork: string | null) => boolean): string[] => [
  ...new Set(
    copies
      .filter(({ transfer }) => isSo(transfer.artwork))
      .map(({ order, transfer }) => `${order.code} ${transfer.name}`),
  ),
];

const pixelsAnInch = whole(PPI.least, PPI.most, ({ printImage }, ways) =>
  printImage.ppiProblem(wholeText(PPI.least, ways), wholeText(PPI.most, ways)),
);

/** Whether the image is mirrored, and what the test strip says to it. */
function Mirror({ printer }: { printer: Printer }) {
  const { printImage: words } = useAllWords();
  const readsInkUp = (printer.inkUp === 'mirrored') === printer.mirrored;
  return (
    <div>
      <Tick
        writes
        label={words.mirror}
        checked={printer.mirrored}
        onChange={(mirrored) => act(edits.editPrinter(printer.id, { mirrored }))}
      />
      <p className="hint">{words.mirrorHint}</p>
      {readsInkUp && <p className="care small">{words.wouldRead}</p>}
      {printer.firstEnd === 'tail' && <p className="quiet small">{words.turnedRound}</p>}
    </div>
  );
}

/** Whether the image makes up for what the printer feeds long or short. */
function Feed({
  settings: { printImage },
  printer,
  onFeed,
}: {
  settings: Omit<Settings, 'changed'>;
  printer: Printer;
  onFeed: (corrected: boolean) => void;
}) {
  const { printImage: words } = useAllWords();
  const ways = useWays();
  return (
    <div>
      <Tick writes label={words.feed} checked={printImage.feedCorrected} onChange={onFeed} />
      <p className="hint">
        {printer.feed === 1 ? words.feedUnknown : words.feedHint(finePercent(printer.feed, ways))}
      </p>
    </div>
  );
}

function Marks({
  choices: { ticks, numbers, names, corners },
  unnumbered,
  onChange,
}: {
  choices: Choices;
  unnumbered: number;
  onChange: (fields: Partial<Choices>) => void;
}) {
  const { printImage: words } = useAllWords();
  const ways = useWays();
  return (
    <fieldset className="image-marks">
      <legend>{words.marks}</legend>
      <Tick writes label={words.ticks} checked={ticks} onChange={(on) => onChange({ ticks: on })} />
      <Tick
        writes
        label={words.numbers(rulerLength(fromMm(4), ways))}
        checked={numbers}
        onChange={(on) => onChange({ numbers: on })}
      />
      <Tick writes label={words.names} checked={names} onChange={(on) => onChange({ names: on })} />
      <Tick writes label={words.corners} checked={corners} onChange={(on) => onChange({ corners: on })} />
      <p className="hint">{words.marksHint}</p>
      {unnumbered > 0 && <p className="care small">{words.unnumbered(unnumbered, ways)}</p>}
    </fieldset>
  );
}
