import { useState } from 'react';
import { edits, type FilmFields, firstFilm } from '../../src/editing';
import { byThrift, type FilmTried } from '../../src/layout';
import {
  cuttings,
  type Film,
  isSameSize,
  type Printer,
  peels,
  printerOf,
  type Run,
  rollSizes,
  rollWidth,
  type SheetSize,
  sheetSizes,
  waysToCut,
} from '../../src/model';
import { keysOf, type Micrometres, um } from '../../src/units';
import { printerChoices } from '../panels/machine-name';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Field } from '../parts/Field';
import { FieldGroup } from '../parts/FieldGroup';
import { Form } from '../parts/Form';
import { shortLength } from '../parts/fields/lengths';
import { type FormOf, useForm } from '../parts/fields/useForm';
import { TryButton } from '../parts/TryButton';
import { settingsOrFirst, useOpenRun, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { useTrials } from '../store/trials';
import { openDialog } from '../store/view';
import { Window } from '../windows/Window';
import { useAllWords, type Words } from '../words';
import { filmLength, money, percent, rulerLength, type Ways } from '../words/format';
import {
  type FilmField,
  filmEntry,
  filmTable,
  inPrinter,
  lastRollOf,
  newFilm,
  nineCuts,
  SPARE,
  togetherOf,
} from './film-form';

const sheetNames = keysOf(sheetSizes);

const size = shortLength('above-zero');

/** The run's film: which one it is, how it may be used, what it costs. Nothing is taken over before "Save". */
export function FilmDialog() {
  const open = useOpenRun();
  return open && <FilmForm run={open.run} film={open.film} />;
}

function FilmForm({ run, film: ofRun }: { run: Run; film: Film }) {
  const { filmForm: words, common } = useAllWords();
  const ways = useWays();
  const films = useShop(({ book }) => book.film);
  const { station } = useShop(({ book }) => settingsOrFirst(book));
  const [chosen, setChosen] = useState<string>(ofRun.id);
  const form = useForm(filmTable, () => filmEntry(ofRun), ways);

  const newIn = (id: string, printer: Printer) =>
    newFilm(
      id === 'new-sheets' ? 'sheets' : 'roll',
      firstFilm('', ways.currency, ways.unit),
      printer,
      lastRollOf(Object.values(films), station, printer.id),
    );
  const choose = (id: string) => {
    const film = films[id];
    setChosen(id);
    form.begin(film ? filmEntry(film) : newIn(id, printerOf(station, ofRun)));
  };
  /** A film that is there keeps what it loses; a new one takes over what its printer's last roll lost. */
  const toPrinter = (printer: Printer) => {
    const { record, entry } = form;
    const next = newIn(chosen, printer);
    if (films[chosen] || record.kind !== 'roll' || next.record.kind !== 'roll')
      return form.choose(inPrinter(record, printer));
    const { jobs, jobBlank, cutBlank } = next.record;
    const { jobBlank: _, cutBlank: __, ...typed } = entry.typed;
    const asked = next.typed.cutBlank === undefined ? {} : { cutBlank: next.typed.cutBlank };
    form.begin({
      record: { ...record, printer: printer.id, jobs, jobBlank, cutBlank },
      typed: { ...typed, ...asked },
    });
  };
  const save = (fields: FilmFields) => {
    act(edits.chooseFilm(run.id, films[chosen]?.id ?? null, fields));
    openDialog(null);
  };
  const locked = run.state !== 'draft' || run.printed !== null;
  return (
    <Window title={words.title}>
      <Form onSubmit={() => form.submit(save)}>
        {!locked && (
          <Choice
            label={words.film}
            value={chosen}
            options={[
              ...Object.values(films)
                .filter((film) => !film.archived || film.id === run.film)
                .map(({ id, name }) => ({ value: id as string, label: name })),
              { value: 'new-roll', label: words.newRoll },
              { value: 'new-sheets', label: words.newSheets },
            ]}
            onChange={choose}
          />
        )}
        {!locked && Object.keys(films).length > 1 && <FilmsTried onChoose={choose} />}
        <FilmFieldset form={form} isNew={!films[chosen]} onPrinter={toPrinter} />
        <div className="actions">
          {films[chosen] && chosen !== run.film && (
            <Button
              writes
              weight="plain"
              onPress={() => {
                act(edits.removeFilm(chosen));
                choose(run.film);
              }}
            >
              {common.remove}
            </Button>
          )}
          <Button onPress={() => openDialog(null)}>{common.cancel}</Button>
          <Button writes type="submit" weight="primary">
            {common.save}
          </Button>
        </div>
      </Form>
    </Window>
  );
}

type FormOfFilm = FormOf<FilmFields, FilmField>;

/** @param isNew whether what must be asked of new film stands open */
function FilmFieldset({
  form,
  isNew,
  onPrinter,
}: {
  form: FormOfFilm;
  isNew: boolean;
  onPrinter: (printer: Printer) => void;
}) {
  const { filmForm: words, press, station: machines } = useAllWords();
  const book = useShop((shop) => shop.book);
  const { station } = settingsOrFirst(book);
  const { record, field } = form;
  return (
    <>
      <FieldGroup title={words.groups.size}>
        {field('name')}
        {station.printers.length > 1 && (
          <Choice
            label={machines.printer}
            value={printerOf(station, record).id}
            options={printerChoices(station)}
            onChange={(id) => onPrinter(printerOf(station, { printer: id }))}
          />
        )}
        <TradeSize form={form} />
        {form.fields('width', 'lengthLeft', 'length', 'sheetsLeft', 'price', 'pricePer', 'sheetPrice')}
        <Choice
          label={press.peel}
          value={record.peel}
          options={peels.map((value) => ({ value, label: press.peels[value] }))}
          onChange={(peel) => form.choose({ ...record, peel })}
        />
      </FieldGroup>
      <FieldGroup
        key={isNew ? 'new' : 'known'}
        isFolded={!isNew}
        title={words.groups.cutting}
        told={form.told('gap', 'spanMax', 'cutBlank')}
      >
        {field('gap')}
        <Choice
          label={words.cutting}
          value={record.cutting}
          options={cuttings.map((value) => ({ value, label: words.cuttings[value] }))}
          onChange={(cutting) => form.choose({ ...record, cutting })}
        />
        <PriceInFilm
          form={form}
          ways={waysToCut(book, record)}
          labels={words.cuttings}
          change={(cutting) => ({ cutting })}
        />
        <Choice
          label={words.together}
          value={record.together.kind}
          options={togethers.map((value) => ({ value, label: words.togethers[value] }))}
          onChange={(kind) => form.choose({ ...record, together: togetherOf(kind, form.opened.together) })}
        />
        {field('nearShare')}
        <PriceInFilm
          form={form}
          ways={['any', 'apart', 'by-due']}
          labels={words.togethers}
          change={(kind) => ({ together: { kind } })}
        />
        {field('spanMax')}
        {record.kind === 'roll' && (
          <SpanHelp onSpan={(span) => form.type({ spanMax: size.show(span, form.reader) })} />
        )}
        {field('cutBlank')}
        {record.kind === 'roll' && <CutsTake form={form} roll={record} />}
      </FieldGroup>
      <FieldGroup isFolded title={words.groups.printing} told={form.told('lead', 'tail', 'left', 'right')}>
        {form.fields('left', 'right', 'lead', 'tail', 'curl', 'jobBlank')}
        {record.kind === 'roll' && (
          <Choice
            label={words.jobs}
            value={record.jobs}
            options={(['run', 'span'] as const).map((value) => ({ value, label: words.jobsOf[value] }))}
            onChange={(jobs) => form.choose({ ...record, jobs })}
          />
        )}
        {field('unreached')}
      </FieldGroup>
      {record.kind === 'roll' && (
        <FieldGroup isFolded={record.noPrint.length === 0} title={words.groups.damage}>
          {field('noPrint')}
        </FieldGroup>
      )}
    </>
  );
}

/** What the blank per cut takes of a run, and what the shop has said of its printer. */
function CutsTake({ form, roll }: { form: FormOfFilm; roll: Extract<FilmFields, { kind: 'roll' }> }) {
  const { filmForm: words } = useAllWords();
  const ways = useWays();
  const { station } = useShop(({ book }) => settingsOrFirst(book));
  const { feedsBack } = printerOf(station, roll);
  const typed = form.textOf('cutBlank') ?? '';
  const { cut, film, cost } = nineCuts(roll, typed, form.reader);
  const read = shortLength('zero').read(typed, form.reader);
  const isNothing = read.ok && read.value === 0;
  if (feedsBack) return isNothing ? null : <p className="hint">{words.drawnBack}</p>;
  return (
    <div className={feedsBack === false && isNothing ? 'hint care' : 'hint'}>
      <p>{words.nineCuts(rulerLength(cut, ways), filmLength(film, ways), money(cost, ways))}</p>
      {feedsBack === null && <p>{words.askDrawnBack}</p>}
      {feedsBack === false && isNothing && <p>{words.notDrawnBack}</p>}
    </div>
  );
}

/** What the trade sells, by its measures; another size is one's own. */
function TradeSize({ form }: { form: FormOfFilm }) {
  const { filmForm: words } = useAllWords();
  const own = { value: 'own' as const, label: words.ownSize };
  const lengthIn = (name: 'width' | 'length') => {
    const read = size.read(form.textOf(name) ?? '', form.reader);
    return read.ok ? read.value : null;
  };
  const typed = (length: Micrometres) => size.show(length, form.reader);
  const width = lengthIn('width');
  const { unit } = form.reader;
  if (form.record.kind === 'roll') {
    return (
      <Choice
        label={words.preset}
        value={rollSizes.find((each) => width !== null && isSameSize(rollWidth(each, unit), width)) ?? 'own'}
        options={[...rollSizes.map((value) => ({ value, label: words.presets[unit][value] })), own]}
        onChange={(chosen) => chosen !== 'own' && form.type({ width: typed(rollWidth(chosen, unit)) })}
      />
    );
  }
  const length = lengthIn('length');
  const isSize = (name: SheetSize) =>
    width !== null &&
    length !== null &&
    isSameSize(sheetSizes[name].width, width) &&
    isSameSize(sheetSizes[name].length, length);
  return (
    <Choice
      label={words.preset}
      value={sheetNames.find(isSize) ?? 'own'}
      options={[...sheetNames.map((value) => ({ value, label: words.sheetPresets[unit][value] })), own]}
      onChange={(chosen) => {
        if (chosen === 'own') return;
        const sheet = sheetSizes[chosen];
        form.type({ width: typed(sheet.width), length: typed(sheet.length) });
      }}
    />
  );
}

const togethers = ['any', 'near', 'apart', 'by-due'] as const;

const takes = ({ film, length, sheets }: FilmTried, words: Words['filmForm'], ways: Ways): string =>
  film.kind === 'roll' ? filmLength(length, ways) : words.sheets(sheets, ways);

/** Every film in stock tried for this run, the cheapest named first. */
function FilmsTried({ onChoose }: { onChoose: (film: string) => void }) {
  const { filmForm: words } = useAllWords();
  const ways = useWays();
  const open = useOpenRun();
  const { trying, share, start, stop } = useTrials();
  const [list, setList] = useState<readonly FilmTried[]>([]);
  if (!open) return null;
  const tryAll = async () => {
    const { book } = useShop.getState();
    const films = Object.values(book.film).filter(({ archived }) => !archived);
    const found = await start(
      { book, run: open.run },
      films.map((film) => ({ film })),
    );
    setList(found.map(({ tried }) => tried).sort(byThrift));
  };
  return (
    <div className="field compare tried">
      <TryButton
        label={words.tryAll}
        trying={trying}
        share={share}
        onStart={() => void tryAll()}
        onStop={stop}
      />
      <ul>
        {list.map((each) => (
          <li key={each.film.id}>
            <Button weight="plain" onPress={() => onChoose(each.film.id)}>
              {words.tried(each.film.name, takes(each, words, ways), money(each.cost, ways))}
            </Button>
            {each.leftOut > 0 && <span className="care small">{words.triedLeftOut(each.leftOut, ways)}</span>}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** What ways to lay out the copies of this run cost in film, before one is chosen. */
function PriceInFilm<Way extends string>({
  form,
  ways: compared,
  labels,
  change,
}: {
  form: FormOfFilm;
  ways: readonly Way[];
  labels: Readonly<Record<Way, string>>;
  change: (way: Way) => Partial<Pick<Film, 'cutting' | 'together'>>;
}) {
  const { filmForm: words } = useAllWords();
  const ways = useWays();
  const open = useOpenRun();
  const { trying, share, start, stop } = useTrials();
  const [told, setTold] = useState<readonly string[]>([]);
  if (!open) return null;
  const compare = async () => {
    const read = form.read();
    if (!read.ok) return setTold([words.compareFirst]);
    const film = { ...read.value, id: open.film.id, changed: open.film.changed } as Film;
    const found = await start(
      { book: useShop.getState().book, run: open.run },
      compared.map((way) => ({ film: { ...film, ...change(way) } as Film, endless: true })),
    );
    if (found.length < compared.length) return;
    const used = ({ length, sheets }: FilmTried) => (film.kind === 'roll' ? length : sheets);
    const least = Math.min(...found.map(({ tried }) => used(tried)));
    if (least === 0) return setTold([words.nothingToCompare]);
    const lines = found.map(({ tried }, at) => {
      const more = used(tried) === least ? null : percent(used(tried) / least - 1, ways);
      const label = labels[compared[at] as Way];
      return `${label}: ${words.compared(takes(tried, words, ways), more)}`;
    });
    setTold([...lines, words.comparedQuickly]);
  };
  return (
    <div className="field compare">
      <TryButton
        label={words.compare}
        trying={trying}
        share={share}
        onStart={() => void compare()}
        onStop={stop}
      />
      <div className="hint" role="status">
        {told.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
    </div>
  );
}

/** The longest span, worked out from what it must fit into. */
function SpanHelp({ onSpan }: { onSpan: (span: Micrometres) => void }) {
  const catalogue = useAllWords();
  const { filmForm: words } = catalogue;
  const ways = useWays();
  const [typed, setTyped] = useState({ tray: '', platen: '' });
  const enter = (change: Partial<typeof typed>) => {
    const next = { ...typed, ...change };
    setTyped(next);
    const lengths = [next.tray, next.platen].flatMap((text) => {
      const read = size.read(text, { ...ways, words: catalogue });
      return read.ok ? [read.value] : [];
    });
    const span = Math.min(...lengths) - SPARE[ways.unit];
    if (lengths.length > 0 && span > 0) onSpan(um(span));
  };
  return (
    <>
      <Field label={words.tray} value={typed.tray} onChange={(tray) => enter({ tray })} />
      <Field label={words.platen} value={typed.platen} onChange={(platen) => enter({ platen })} />
    </>
  );
}
