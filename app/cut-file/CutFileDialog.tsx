import { useMemo } from 'react';
import { isMirrored } from '../../src/cutting';
import { edits } from '../../src/editing';
import type { LaidRun } from '../../src/layout';
import type { Settings } from '../../src/model';
import { cutFiles } from '../../src/output/cut-file';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Tick } from '../parts/Tick';
import { printerOfRun, settingsOrFirst, useMapRun, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { saveCutFiles } from './save-cut-files';

/** The lines around every copy for a contour cutter: in what form, and how the film lies under it. */
export function CutFileDialog() {
  const { cutFile: words } = useAllWords();
  const run = useMapRun();
  if (!run) return null;
  return (
    <Window title={words.title}>
      <CutFileForm run={run} />
    </Window>
  );
}

function CutFileForm({ run }: { run: LaidRun }) {
  const { common, cutFile: words, cutMap } = useAllWords();
  const ways = useWays();
  const settings = useShop(({ book }) => settingsOrFirst(book));
  const { cutFile, printImage } = settings;
  const printer = printerOfRun(run);
  const mirrored = isMirrored(cutFile.view, printer.inkUp, printer.mirrored);
  const withCorners = printImage.corners;
  const files = useMemo(() => cutFiles(run, { mirrored, withCorners }), [run, mirrored, withCorners]);
  const set = (fields: Partial<Settings['cutFile']>) =>
    act(edits.editSettings({ cutFile: { ...cutFile, ...fields } }));
  const sum = (of: (file: (typeof files)[number]) => number) =>
    files.reduce((total, file) => total + of(file), 0);
  const [boxed, loose, missing] = [
    run.copies.filter(({ outline }) => outline === null).length,
    sum((file) => file.loose),
    withCorners ? sum(({ corners }) => 4 - corners.length) : 0,
  ];
  return (
    <>
      <p className="quiet">{words.lead}</p>
      <div className="fields">
        <Choice
          writes
          label={words.form}
          value={cutFile.form}
          options={(['svg', 'dxf'] as const).map((value) => ({ value, label: words.forms[value] }))}
          onChange={(form) => set({ form })}
        />
        <Choice
          writes
          label={words.view}
          value={cutFile.view}
          options={(['ink-up', 'on-screen'] as const).map((value) => ({ value, label: cutMap.views[value] }))}
          onChange={(view) => set({ view })}
        />
        <div>
          <Tick
            writes
            label={words.corners}
            checked={withCorners}
            onChange={(corners) => act(edits.editSettings({ printImage: { ...printImage, corners } }))}
          />
          <p className="hint">{words.cornersHint}</p>
        </div>
      </div>
      <div role="status">
        {missing > 0 && <p className="care small">{words.noCorners(missing, ways)}</p>}
        {boxed > 0 && <p className="care small">{words.boxed(boxed, ways)}</p>}
        {loose > 0 && <p className="care small">{words.loose(loose, ways)}</p>}
      </div>
      <p className="quiet small">{words.lies[mirrored ? 'mirrored' : 'plain']}</p>
      <p className="quiet small">{words.caution}</p>
      <div className="actions">
        <Button onPress={() => openDialog(null)}>{common.cancel}</Button>
        <Button
          weight="primary"
          isDisabled={files.length === 0}
          onPress={() => {
            const lies = words.lies[mirrored ? 'mirrored' : 'plain'];
            saveCutFiles(run.name, files, cutFile.form, lies);
            openDialog(null);
          }}
        >
          {files.length > 1 ? words.saveAll(files.length, ways) : words.save}
        </Button>
      </div>
    </>
  );
}
