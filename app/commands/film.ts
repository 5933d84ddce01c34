import { setPinned, setPlaces } from '../../src/editing';
import type { LaidCopy } from '../../src/layout';
import { fromMm, um } from '../../src/units';
import { panBy, reveal, zoomBy, zoomTo } from '../film/canvas/camera';
import { runScale, widthScale } from '../film/canvas/viewport';
import { move, quarterTurn } from '../film/drag';
import { layOut, stopPlanning, usePlanning } from '../store/planning';
import { laidDraft } from '../store/selectors';
import { commit, mayWrite, useShop } from '../store/shop';
import { goTo, select, useView } from '../store/view';
import { words } from '../words';
import type { Chord, Command } from './command';

const label = words.commands;

/** The copy that is selected, where it lies. */
function selectedCopy(): LaidCopy | null {
  const { selected } = useView.getState();
  return laidDraft(useShop.getState().book)?.copies.find((copy) => copy.id === selected) ?? null;
}

const onSelected = (act: (copy: LaidCopy) => void) => ({
  available: () => mayWrite() && selectedCopy() !== null,
  run: () => {
    const copy = selectedCopy();
    if (copy) act(copy);
  },
});

const anyCopies = (): boolean => Object.keys(useShop.getState().book.copy).length > 0;
const isWorking = (): boolean => usePlanning.getState().planning.kind === 'working';

export const layOutCommand: Command = {
  id: 'lay-out',
  label: label.layOut,
  scope: 'everywhere',
  chords: [{ key: 'Enter', mod: true }],
  available: () => mayWrite() && anyCopies() && !isWorking(),
  run: () => void layOut('pinned'),
};

export const placeWaitingCommand: Command = {
  id: 'place-waiting',
  label: label.placeWaiting,
  scope: 'everywhere',
  chords: [{ key: 'Enter', mod: true, shift: true }],
  available: () =>
    mayWrite() &&
    !isWorking() &&
    Object.values(useShop.getState().book.copy).some((copy) => copy.place === null),
  run: () => void layOut('placed'),
};

export const stopCommand: Command = {
  id: 'stop',
  label: label.stop,
  scope: 'everywhere',
  chords: [{ key: '.', mod: true }],
  available: isWorking,
  run: stopPlanning,
};

export const turnCommand: Command = {
  id: 'turn',
  label: label.turn,
  scope: 'film',
  chords: [{ key: 'r' }],
  ...onSelected((copy) => move(copy.id, quarterTurn)),
};

export const pinCommand: Command = {
  id: 'pin',
  label: label.pin,
  scope: 'film',
  chords: [{ key: 'p' }],
  ...onSelected((copy) => commit((book) => setPinned(book, [copy.id], !copy.pinned))),
};

export const takeOffCommand: Command = {
  id: 'take-off',
  label: label.takeOff,
  scope: 'film',
  chords: [{ key: 'Delete' }, { key: 'Backspace' }],
  ...onSelected((copy) => {
    commit((book) => setPlaces(book, [[copy.id, null]]));
    select(null);
  }),
};

/** The direction of each arrow on the screen, as a step on the film: `sx = y`, `sy = W - x`. */
const arrows = {
  ArrowRight: { x: 0, y: 1 },
  ArrowLeft: { x: 0, y: -1 },
  ArrowUp: { x: 1, y: 0 },
  ArrowDown: { x: -1, y: 0 },
} as const;

function nudgeCommand(
  id: string,
  commandLabel: string,
  mm: number,
  modifiers: Omit<Chord, 'key'>,
): Command[] {
  return Object.entries(arrows).map(([key, step]) => ({
    id: `${id}-${key}`,
    label: commandLabel,
    scope: 'film',
    chords: [{ key, ...modifiers }],
    ...onSelected((copy) =>
      move(copy.id, (lying) => ({
        ...lying,
        x: um(lying.x + step.x * fromMm(mm)),
        y: um(lying.y + step.y * fromMm(mm)),
      })),
    ),
  }));
}

function selectNeighbour(by: 1 | -1): void {
  const copies = laidDraft(useShop.getState().book)?.copies ?? [];
  if (copies.length === 0) return;
  const { selected } = useView.getState();
  const now = copies.findIndex((copy) => copy.id === selected);
  const next = copies[now < 0 ? 0 : (now + by + copies.length) % copies.length];
  if (!next) return;
  select(next.id);
  reveal(next.y, next.y + next.length);
}

const onFilm = (id: string, commandLabel: string, chords: readonly Chord[], run: () => void): Command => ({
  id,
  label: commandLabel,
  scope: 'film',
  chords,
  available: () => laidDraft(useShop.getState().book) !== null,
  run,
});

export const cutMapCommand: Command = {
  id: 'cut-map',
  label: label.cutMap,
  scope: 'everywhere',
  chords: [],
  available: () => (laidDraft(useShop.getState().book)?.copies.length ?? 0) > 0,
  run: () => goTo('cut-map'),
};

export const zoomInCommand = onFilm('zoom-in', label.zoomIn, [{ key: '+' }, { key: '=' }], () => zoomBy(1.4));
export const zoomOutCommand = onFilm('zoom-out', label.zoomOut, [{ key: '-' }], () => zoomBy(1 / 1.4));
export const wholeWidthCommand = onFilm('whole-width', label.wholeWidth, [{ key: '1' }], () =>
  zoomTo(widthScale),
);
export const wholeRunCommand = onFilm('whole-run', label.wholeRun, [{ key: '0' }], () => zoomTo(runScale));

export const filmCommands: readonly Command[] = [
  layOutCommand,
  placeWaitingCommand,
  stopCommand,
  onFilm('next', label.nextCopy, [{ key: 'n' }], () => selectNeighbour(1)),
  onFilm('previous', label.previousCopy, [{ key: 'n', shift: true }], () => selectNeighbour(-1)),
  turnCommand,
  pinCommand,
  takeOffCommand,
  ...nudgeCommand('nudge', label.nudge, 1, {}),
  ...nudgeCommand('nudge-far', label.nudgeFar, 10, { shift: true }),
  ...nudgeCommand('nudge-fine', label.nudgeFine, 0.1, { alt: true }),
  zoomInCommand,
  zoomOutCommand,
  wholeWidthCommand,
  wholeRunCommand,
  onFilm('pan-on', label.panOn, [{ key: 'PageDown' }], () => panBy(300, 0)),
  onFilm('pan-back', label.panBack, [{ key: 'PageUp' }], () => panBy(-300, 0)),
  onFilm('let-go', label.selectNothing, [{ key: 'Escape' }], () => select(null)),
];
