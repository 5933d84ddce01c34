import { useState } from 'react';
import { withDensity } from '../../src/artwork';
import { edits } from '../../src/editing';
import { type Film, type Printer, printerOf } from '../../src/model';
import { drawStrip, MEASURE, stripSize } from '../../src/output/test-strip';
import { um } from '../../src/units';
import { download } from '../files/download';
import { printerChoices } from '../panels/machine-name';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Field } from '../parts/Field';
import { shortLength } from '../parts/fields/lengths';
import { useReader } from '../store/reader';
import { settingsOrFirst, useOpenRun } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { CloseButton } from '../windows/CloseButton';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { number, onRulers } from '../words/format';

const PPI = 150;
const MM_PER_INCH = 25.4;

/** The strip as a PNG of true size on a transparent ground. */
async function stripImage(film: Film): Promise<Blob> {
  const { width, length } = stripSize(film.width, film.margins);
  const scale = PPI / MM_PER_INCH;
  const canvas = new OffscreenCanvas(Math.round(width * scale), Math.round(length * scale));
  const pen = canvas.getContext('2d');
  if (!pen) throw new Error('no 2d context');
  pen.scale(scale, scale);
  drawStrip(pen, width);
  const png = new Uint8Array(await (await canvas.convertToBlob({ type: 'image/png' })).arrayBuffer());
  const density = (PPI / MM_PER_INCH) * 1000;
  return new Blob([withDensity(png, { x: density, y: density })], { type: 'image/png' });
}

/** Measured lengths further off than this are not a printer's feed but a slip. */
const PLAUSIBLE = { least: 0.95, most: 1.05 };

const size = shortLength('above-zero');

/** Prints a strip once per printer and tells what it showed: which end comes first, how it lies, how far it feeds. */
export function TestStripDialog() {
  const { strip: words, station: names } = useAllWords();
  const open = useOpenRun();
  const { station } = useShop(({ book }) => settingsOrFirst(book));
  const films = useShop(({ book }) => book.film);
  const [chosen, setChosen] = useState<string | null>(null);
  if (!open) return null;
  const printer = station.printers.find(({ id }) => id === chosen) ?? printerOf(station, open.film);
  const isIn = (film: Film) => printerOf(station, film).id === printer.id;
  // A strip is as wide as the film that it is printed on.
  const film =
    [open.film, ...Object.values(films).filter(({ archived }) => !archived)].find(isIn) ?? open.film;
  return (
    <Window title={words.title}>
      <p>{words.intro}</p>
      {station.printers.length > 1 && (
        <Choice
          label={names.printer}
          value={printer.id}
          options={printerChoices(station)}
          onChange={setChosen}
        />
      )}
      <div className="actions">
        <Button onPress={() => void stripImage(film).then((png) => download(png, words.fileName))}>
          {words.save}
        </Button>
      </div>
      <Told key={printer.id} printer={printer} />
    </Window>
  );
}

/** What the strip of a printer showed; of no other anything is changed. */
function Told({ printer }: { printer: Printer }) {
  const reader = useReader();
  const { strip: words } = reader.words;
  const shown = printer.feed === 1 ? '' : size.show(um(MEASURE * printer.feed), reader);
  const [measured, setMeasured] = useState(shown);
  const set = (fields: Partial<Omit<Printer, 'id'>>) => act(edits.editPrinter(printer.id, fields));
  const length = reader.words.cutMap.cuts.both(...onRulers(MEASURE, reader));
  const read = size.read(measured, reader);
  const feed = read.ok ? read.value / MEASURE : null;
  const plausible = feed !== null && feed >= PLAUSIBLE.least && feed <= PLAUSIBLE.most;
  return (
    <>
      <div className="fields">
        <Choice
          writes
          label={words.firstEnd}
          value={printer.firstEnd}
          options={[
            { value: 'lead', label: words.ends.lead },
            { value: 'tail', label: words.ends.tail },
          ]}
          onChange={(firstEnd) => set({ firstEnd })}
        />
        <Choice
          writes
          label={words.inkUp}
          value={printer.inkUp}
          options={[
            { value: 'mirrored', label: words.shows.mirrored },
            { value: 'plain', label: words.shows.plain },
          ]}
          // A printer that lays an image down as it is needs it mirrored.
          onChange={(inkUp) => set({ inkUp, mirrored: inkUp === 'plain' })}
        />
        <Field
          writes
          label={words.measured}
          hint={words.feed(length, number(printer.feed, reader.locale, 0, 4))}
          value={measured}
          onChange={setMeasured}
          // What was shown is rounded: left alone, it is no new measure.
          onBlur={() => measured !== shown && plausible && feed !== null && set({ feed })}
          problem={measured.trim() === '' || plausible ? null : words.implausible(length)}
        />
      </div>
      <p className="quiet small">{words.after}</p>
      <div className="actions">
        <Button
          writes
          weight="plain"
          onPress={() => {
            set({ firstEnd: 'lead', feed: 1, inkUp: 'mirrored', mirrored: false });
            setMeasured('');
          }}
        >
          {words.reset}
        </Button>
        <CloseButton />
      </div>
    </>
  );
}
