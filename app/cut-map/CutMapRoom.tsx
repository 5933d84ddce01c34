import { useEffect, useMemo, useState } from 'react';
import { editSettings } from '../../src/editing';
import { type Settings, settingsOf } from '../../src/model';
import { cutMapPages } from '../../src/output/cut-map';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { useLaidRun } from '../store/selectors';
import { commitQuietly, useShop } from '../store/shop';
import { goTo } from '../store/view';
import { cutMapWords as words } from '../words/cut-map';
import { CutTable } from './CutTable';
import { fontsReady, screenMeasure } from './fonts';
import { SheetDrawing } from './SheetDrawing';
import { savePdf } from './save-pdf';
import './cut-map.css';

const options = <Value extends string>(labels: Readonly<Record<Value, string>>) =>
  (Object.entries(labels) as [Value, string][]).map(([value, label]) => ({ value, label }));

/** The cut map as it is printed, and what it may be printed on. */
export function CutMapRoom() {
  const run = useLaidRun();
  const settings = useShop(({ book }) => settingsOf(book));
  const [made] = useState(() => new Date());
  const [ready, setReady] = useState(false);
  const [saving, setSaving] = useState(false);
  useEffect(() => {
    void fontsReady().finally(() => setReady(true));
  }, []);
  const paper = settings?.paper ?? 'a4';
  const view = settings?.mapView ?? 'ink-up';
  const pages = useMemo(
    () =>
      run && ready
        ? cutMapPages(run, {
            paper,
            view,
            words: words.onPaper(navigator.language),
            date: made,
            measure: screenMeasure(),
          })
        : [],
    [run, ready, paper, view, made],
  );
  if (!run) return null;
  const set = (fields: Partial<Pick<Settings, 'paper' | 'mapView'>>) =>
    commitQuietly((draft) => editSettings(draft, fields));
  const save = async () => {
    setSaving(true);
    await savePdf(pages, run.name, made);
    setSaving(false);
  };
  return (
    <>
      <div className="room-head">
        <div>
          <h1>{words.title}</h1>
          <p className="quiet">{words.actualSize}</p>
        </div>
        <div className="actions map-acts">
          <Choice
            label={words.paper}
            value={paper}
            options={options(words.papers)}
            onChange={(chosen) => set({ paper: chosen })}
          />
          <Choice
            label={words.view}
            value={view}
            options={options(words.views)}
            onChange={(chosen) => set({ mapView: chosen })}
          />
          <Button weight="plain" onPress={() => goTo('film')}>
            {words.back}
          </Button>
          <Button onPress={() => void save()} isDisabled={saving || pages.length === 0}>
            {saving ? words.saving : words.save}
          </Button>
          <Button weight="primary" onPress={() => print()} isDisabled={pages.length === 0}>
            {words.print}
          </Button>
        </div>
      </div>
      <div className="sheets">
        {pages.map((page) => (
          <SheetDrawing key={page.number} page={page} paper={paper} />
        ))}
      </div>
      <CutTable run={run} />
    </>
  );
}
