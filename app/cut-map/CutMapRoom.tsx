import { useEffect, useMemo, useState } from 'react';
import { edits } from '../../src/editing';
import type { LaidRun } from '../../src/layout';
import { type Book, garmentsByOrder, isByOutlines, ordersOfRun, type Settings } from '../../src/model';
import { cutMapPages } from '../../src/output/cut-map';
import { NoRun } from '../panels/NoRun';
import { useThumbnails } from '../panels/useThumbnails';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { printerOfRun, settingsOrFirst, useMapRun, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { goTo, openDialog } from '../store/view';
import { CutTable } from './CutTable';
import { fontsReady, screenMeasure } from './fonts';
import { SheetDrawing } from './SheetDrawing';
import { savePdf } from './save-pdf';
import '../parts/paper.css';
import './cut-map.css';
import { useAllWords, type Words } from '../words';
import { whole } from '../words/format';

const options = <Value extends string>(labels: Readonly<Record<Value, string>>) =>
  (Object.entries(labels) as [Value, string][]).map(([value, label]) => ({ value, label }));

/** The garments of the orders on a run, a line each, to be laid ready beside the press. */
function garmentLines(run: LaidRun, words: Words['cutMap'], locale: string): string[] {
  const garments = garmentsByOrder(run.view);
  const orders = new Map(run.copies.map(({ order }) => [order.id, order.code]));
  return [...orders].flatMap(([id, code]) =>
    (garments.get(id) ?? []).map(({ style, colour, size, count }) =>
      words.garmentLine(code, style, colour, size, whole(count, { locale })),
    ),
  );
}

/** All on a run's map that was typed by the shop, in whatever script. */
const namesOn = (run: LaidRun, orders: Book['order'], words: Words['cutMap'], locale: string): string =>
  [
    run.name,
    ...new Set(
      run.copies.flatMap(({ order, transfer }) => [order.code, orders[order.id]?.name ?? '', transfer.name]),
    ),
    ...garmentLines(run, words, locale),
  ].join('');

/** The cut map as it is printed, and what it may be printed on. */
export function CutMapRoom() {
  const { cutMap: words, cutFile } = useAllWords();
  const ways = useWays();
  const { locale, unit } = ways;
  const run = useMapRun();
  const book = useShop((shop) => shop.book);
  const settings = settingsOrFirst(book);
  const [made] = useState(() => new Date());
  const [ready, setReady] = useState<string | null>(null);
  const [saving, setSaving] = useState(false);
  const record = run?.view.run;
  const orders = useMemo(() => (record ? ordersOfRun(book, record) : {}), [book, record]);
  const names = useMemo(() => (run ? namesOn(run, orders, words, locale) : ''), [run, orders, words, locale]);
  useEffect(() => {
    void fontsReady(names).finally(() => setReady(names));
  }, [names]);
  const { paper, mapView: view, mapPaper } = settings;
  const printer = run ? printerOfRun(run) : null;
  const { landscape, large, perSpan, pictures } = mapPaper;
  const thumbnails = useThumbnails(pictures ? run : null);
  const pages = useMemo(
    () =>
      run && printer && ready === names
        ? cutMapPages(run, {
            form: { paper, landscape, large, perSpan },
            view,
            printer: { inkUp: printer.inkUp, imageMirrored: printer.mirrored },
            nameOf: (order) => orders[order]?.name ?? '',
            pictures: new Set(thumbnails.keys()),
            garments: garmentLines(run, words, locale),
            words: words.onPaper({ unit, locale }),
            unit,
            date: made,
            measure: screenMeasure(),
          })
        : [],
    [
      run,
      orders,
      ready,
      names,
      paper,
      landscape,
      large,
      perSpan,
      view,
      printer,
      thumbnails,
      made,
      words,
      locale,
      unit,
    ],
  );
  if (!run) return <NoRun title={words.title} />;
  const set = (fields: Partial<Settings>) => act(edits.editSettings(fields));
  const setPaper = (fields: Partial<Settings['mapPaper']>) => set({ mapPaper: { ...mapPaper, ...fields } });
  const save = async () => {
    setSaving(true);
    await savePdf(pages, run.name, made, thumbnails);
    setSaving(false);
  };
  return (
    <>
      <div className="room-head">
        <div>
          <h1>{words.title}</h1>
          <p className="quiet">{words.actualSize(ways)}</p>
        </div>
        <div className="actions">
          <Button weight="plain" onPress={() => goTo('film')}>
            {words.back}
          </Button>
          <Button weight="plain" onPress={() => openDialog({ kind: 'test-strip' })}>
            {words.strip}
          </Button>
          {isByOutlines(run.view.run, run.film) && run.copies.length > 0 && (
            <Button onPress={() => openDialog({ kind: 'cut-file' })}>{cutFile.title}</Button>
          )}
          <Button onPress={() => void save()} isPending={saving} isDisabled={pages.length === 0}>
            {saving ? words.saving : words.save}
          </Button>
          <Button weight="primary" onPress={() => print()} isDisabled={pages.length === 0}>
            {words.print}
          </Button>
        </div>
      </div>
      <div className="map-acts">
        <Choice
          writes
          label={words.paper}
          value={paper}
          options={options(words.papers)}
          onChange={(chosen) => set({ paper: chosen })}
        />
        <Choice
          writes
          label={words.form}
          value={landscape ? 'landscape' : 'portrait'}
          options={options(words.forms)}
          onChange={(form) => setPaper({ landscape: form === 'landscape' })}
        />
        <Choice
          writes
          label={words.view}
          value={view}
          options={options(words.views)}
          onChange={(chosen) => set({ mapView: chosen })}
        />
        <Choice
          writes
          label={words.spans}
          value={perSpan ? 'single' : 'filled'}
          options={options(words.spansOptions)}
          onChange={(spans) => setPaper({ perSpan: spans === 'single' })}
        />
        <Choice
          writes
          label={words.type}
          value={large ? 'large' : 'normal'}
          options={options(words.types)}
          onChange={(type) => setPaper({ large: type === 'large' })}
        />
        <Choice
          writes
          label={words.pictures}
          value={pictures ? 'shown' : 'none'}
          options={options(words.picturesOptions)}
          onChange={(shown) => setPaper({ pictures: shown === 'shown' })}
        />
      </div>
      <div className="sheets">
        {pages.map((page) => (
          <SheetDrawing
            key={page.number}
            page={page}
            paper={landscape ? `${paper}-landscape` : paper}
            thumbnails={thumbnails}
          />
        ))}
      </div>
      <CutTable run={run} />
    </>
  );
}
