import type { LaidRun } from '../../src/layout';
import { wholeRunCommand, wholeWidthCommand, zoomInCommand, zoomOutCommand } from '../commands';
import { CommandButton } from '../commands/CommandButton';
import { Button } from '../parts/Button';
import { Tick } from '../parts/Tick';
import { useWays } from '../store/selectors';
import { openDialog, selectSeveral, showOutlines, useView } from '../store/view';
import { useWords } from '../words';
import { shortLength } from '../words/format';

/** What the film is and how it is looked at. */
export function FilmBar({ run }: { run: LaidRun }) {
  const { film: words } = useWords();
  const ways = useWays();
  const several = useView((view) => view.several);
  const outlines = useView((view) => view.outlines);
  const { film } = run;
  const spanMax = film.kind === 'roll' ? film.spanMax : null;
  return (
    <div className="film-bar">
      <p>
        <strong>{film.name}</strong>{' '}
        <span className="quiet">
          {words.filmLine(
            shortLength(film.width, ways),
            shortLength(film.gap, ways),
            spanMax === null ? null : shortLength(spanMax, ways),
          )}
        </span>
      </p>
      <Button weight="plain" onPress={() => openDialog({ kind: 'film' })}>
        {words.settings}
      </Button>
      <Tick label={words.several} checked={several} onChange={selectSeveral} />
      <Tick label={words.outlines} checked={outlines} onChange={showOutlines} />
      <fieldset className="actions zoom" aria-label={words.zoom}>
        <CommandButton command={wholeRunCommand} weight="plain" />
        <CommandButton command={wholeWidthCommand} weight="plain" />
        <CommandButton command={zoomOutCommand} sign="−" />
        <CommandButton command={zoomInCommand} sign="+" />
      </fieldset>
    </div>
  );
}
