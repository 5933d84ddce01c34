import { useState } from 'react';
import { edits } from '../../src/editing';
import { byThrift, type FilmTried } from '../../src/layout';
import { type Film, peels, type RollSize, rollWidths, type SheetSize, sheetSizes } from '../../src/model';
import { fromMm, parseLength, um } from '../../src/units';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Field } from '../parts/Field';
import { Form } from '../parts/Form';
import { TryButton } from '../parts/TryButton';
import { firstFilm } from '../store/first-book';
import { useOpenRun, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { useTrials } from '../store/trials';
import { openDialog } from '../store/view';
import { Window } from '../windows/Window';
import { useWords, type Words } from '../words';
import { filmLength, money, percent, typedLength, type Ways } from '../words/format';
import { type FilmForm, type FilmProblems, formOf, readForm } from './film-form';

const rollSizes = Object.keys(rollWidths) as RollSize[];
const sheetNames = Object.keys(sheetSizes) as SheetSize[];

/** A span stays this much shorter than the tray and the platen (common practice, no source). */
const SPARE = fromMm(20);

/** The run's film: which one it is, how it may be used, what it costs. Nothing is taken over before "Save". */
export function FilmDialog() {
  const { filmForm: words, common } = useWords();
  const ways = useWays();
  const open = useOpenRun();
  const films = useShop(({ book }) => book.film);
  const [chosen, setChosen] = useState<string>(() => open?.run.film ?? 'new');
  const [form, setForm] = useState<FilmForm | null>(() => (open ? formOf(open.film, ways) : null));
  const [problems, setProblems] = useState<FilmProblems>({});
  if (!open || !form) return null;

  const choose = (id: string) => {
    const film = films[id];
    setChosen(id);
    setProblems({});
    if (film) setForm(formOf(film, ways));
    else {
      setForm({
        ...formOf(firstFilm(ways.currency), ways),
        kind: id === 'new-sheets' ? 'sheets' : 'roll',
        name: '',
        // What a roll costs says nothing of a sheet.
        ...(id === 'new-sheets' ? { price: '' } : {}),
      });
    }
  };
  const save = () => {
    const read = readForm(form, films[chosen] ?? null, ways);
    if (!read.ok) return setProblems(read.problem);
    act(edits.chooseFilm(open.run.id, films[chosen]?.id ?? null, read.value));
    openDialog(null);
  };
  const locked = open.run.state !== 'draft' || open.run.printed !== null;
  return (
    <Window title={words.title}>
      <Form onSubmit={save}>
        {!locked && (
          <Choice
            label={words.film}
            value={chosen}
            options={[
              ...Object.values(films)
                .filter((film) => !film.archived || film.id === open.run.film)
                .map(({ id, name }) => ({ value: id as string, label: name })),
              { value: 'new-roll', label: words.newRoll },
              { value: 'new-sheets', label: words.newSheets },
            ]}
            onChange={choose}
          />
        )}
        {!locked && Object.keys(films).length > 1 && <FilmsTried onChoose={choose} />}
        <FilmFieldset form={form} problems={problems} onChange={setForm} />
        <div className="actions">
          {films[chosen] && chosen !== open.run.film && (
            <Button
              weight="plain"
              onPress={() => {
                act(edits.removeFilm(chosen));
                choose(open.run.film);
              }}
            >
              {common.remove}
            </Button>
          )}
          <Button onPress={() => openDialog(null)}>{common.cancel}</Button>
          <Button type="submit" weight="primary">
            {common.save}
          </Button>
        </div>
      </Form>
    </Window>
  );
}

function FilmFieldset({
  form,
  problems,
  onChange,
}: {
  form: FilmForm;
  problems: FilmProblems;
  onChange: (form: FilmForm) => void;
}) {
  const { filmForm: words, press } = useWords();
  const ways = useWays();
  const field = (
    name: Exclude<keyof FilmForm, 'kind' | 'cutting' | 'together' | 'peel'>,
    label: string,
    hint?: string,
  ) => (
    <Field
      label={label}
      value={form[name]}
      onChange={(value) => onChange({ ...form, [name]: value })}
      problem={problems[name] ?? null}
      {...(hint ? { hint } : {})}
    />
  );
  const bench = (length: Parameters<typeof typedLength>[0]) => `${typedLength(length, ways)} ${ways.unit}`;
  const width = parseLength(form.width, ways.unit);
  const length = parseLength(form.length, ways.unit);
  const roll = rollSizes.find((size) => width.ok && rollWidths[size] === width.value) ?? 'own';
  const sheet =
    sheetNames.find(
      (size) =>
        width.ok &&
        length.ok &&
        sheetSizes[size].width === width.value &&
        sheetSizes[size].length === length.value,
    ) ?? 'own';
  return (
    <>
      {form.kind === 'roll' ? (
        <Choice
          label={words.preset}
          value={roll}
          options={[
            ...rollSizes.map((value) => ({ value, label: words.presets[value] })),
            { value: 'own' as const, label: words.ownSize },
          ]}
          onChange={(size) => size !== 'own' && onChange({ ...form, width: bench(rollWidths[size]) })}
        />
      ) : (
        <Choice
          label={words.preset}
          value={sheet}
          options={[
            ...sheetNames.map((value) => ({ value, label: words.sheetPresets[value] })),
            { value: 'own' as const, label: words.ownSize },
          ]}
          onChange={(size) =>
            size !== 'own' &&
            onChange({
              ...form,
              width: bench(sheetSizes[size].width),
              length: bench(sheetSizes[size].length),
            })
          }
        />
      )}
      {field('name', words.name)}
      {field('width', words.width)}
      {form.kind === 'roll' ? field('lengthLeft', words.lengthLeft) : field('length', words.length)}
      {form.kind === 'sheets' && field('sheetsLeft', words.sheetsLeft)}
      {field('left', words.left)}
      {field('right', words.right)}
      {field('lead', words.lead)}
      {field('tail', words.tail)}
      {field('gap', words.gap, words.gapHint)}
      <Choice
        label={words.cutting}
        value={form.cutting}
        options={cuttings.map((value) => ({ value, label: words.cuttings[value] }))}
        onChange={(cutting) => onChange({ ...form, cutting })}
      />
      <PriceInFilm form={form} ways={cuttings} labels={words.cuttings} change={(cutting) => ({ cutting })} />
      <Choice
        label={words.together}
        value={form.together}
        options={togethers.map((value) => ({ value, label: words.togethers[value] }))}
        onChange={(together) => onChange({ ...form, together })}
      />
      {form.together === 'near' && field('nearShare', words.nearShare)}
      <PriceInFilm
        form={form}
        ways={['any', 'apart']}
        labels={words.togethers}
        change={(kind) => ({ together: { kind } })}
      />
      <Choice
        label={press.peel}
        value={form.peel}
        options={peels.map((value) => ({ value, label: press.peels[value] }))}
        onChange={(peel) => onChange({ ...form, peel })}
      />
      {field('curl', words.curl, words.curlHint)}
      {form.kind === 'roll' && field('spanMax', words.spanMax, words.spanHint)}
      {form.kind === 'roll' && <SpanHelp onSpan={(span) => onChange({ ...form, spanMax: bench(span) })} />}
      {form.kind === 'roll' && field('jobBlank', words.jobBlank)}
      {form.kind === 'roll' && field('cutBlank', words.cutBlank, words.cutBlankHint)}
      {form.kind === 'roll' && field('unreached', words.unreached)}
      {form.kind === 'roll' && field('noPrint', words.noPrint, words.noPrintHint)}
      {field('price', `${form.kind === 'roll' ? words.price : words.pricePerSheet} (${ways.currency})`)}
      {form.kind === 'roll' && field('pricePer', words.pricePer)}
    </>
  );
}

const cuttings = ['free', 'straight', 'staged'] as const;
const togethers = ['any', 'near', 'apart'] as const;

const takes = ({ film, length, sheets }: FilmTried, words: Words['filmForm'], ways: Ways): string =>
  film.kind === 'roll' ? filmLength(length, ways) : words.sheets(sheets, ways);

/** Every film in stock tried for this run, the cheapest named first. */
function FilmsTried({ onChoose }: { onChoose: (film: string) => void }) {
  const { filmForm: words } = useWords();
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
  form: FilmForm;
  ways: readonly Way[];
  labels: Readonly<Record<Way, string>>;
  change: (way: Way) => Partial<Pick<Film, 'cutting' | 'together'>>;
}) {
  const { filmForm: words } = useWords();
  const ways = useWays();
  const open = useOpenRun();
  const { trying, share, start, stop } = useTrials();
  const [told, setTold] = useState<readonly string[]>([]);
  if (!open) return null;
  const compare = async () => {
    const read = readForm(form, open.film, ways);
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
function SpanHelp({ onSpan }: { onSpan: (span: ReturnType<typeof um>) => void }) {
  const { filmForm: words } = useWords();
  const ways = useWays();
  const [typed, setTyped] = useState({ tray: '', platen: '' });
  const enter = (change: Partial<typeof typed>) => {
    const next = { ...typed, ...change };
    setTyped(next);
    const lengths = [next.tray, next.platen].flatMap((text) => {
      const read = parseLength(text, ways.unit);
      return read.ok ? [read.value] : [];
    });
    const span = Math.min(...lengths) - SPARE;
    if (lengths.length > 0 && span > 0) onSpan(um(span));
  };
  return (
    <>
      <Field label={words.tray} value={typed.tray} onChange={(tray) => enter({ tray })} />
      <Field label={words.platen} value={typed.platen} onChange={(platen) => enter({ platen })} />
    </>
  );
}
