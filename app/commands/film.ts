import { filmEdits } from '../../src/editing';
import { type LaidCopy, type LaidRun, turnedInPlace } from '../../src/layout';
import type { Book } from '../../src/model';
import { fromInches, fromMm, onceFor, turnedBy, um, whileSame } from '../../src/units';
import { fitIn, panBy, reveal, zoomBy, zoomTo } from '../store/camera';
import { move } from '../store/held';
import { layOut, settlePlanning, usePlanning } from '../store/planning';
import { laidNow, openRunNow, settingsOrFirst } from '../store/selectors';
import { act, mayWrite, useShop } from '../store/shop';
import { goTo, openDialog, select, useView } from '../store/view';
import { runScale, widthScale } from '../store/viewport';
import type { Chord, Command } from './command';

const selectedOf = whileSame(
  (run: LaidRun | null, selected: ReadonlySet<string>): readonly LaidCopy[] =>
    run?.copies.filter((copy) => selected.has(copy.id)) ?? [],
);

/** The copies that are selected, where they lie: each command asks for them, whenever anything changes. */
const selectedCopies = (): readonly LaidCopy[] => selectedOf(laidNow(), useView.getState().selected);

const movable = (): LaidCopy[] => selectedCopies().filter((copy) => !copy.fixed);

/** An act for the selected copies that may be moved. */
const onSelected = (
  act: (copies: readonly LaidCopy[], ids: readonly LaidCopy['id'][]) => void,
  least = 1,
) => ({
  available: () => mayWrite() && movable().length >= least,
  run: () => {
    const copies = movable();
    if (copies.length >= least) {
      act(
        copies,
        copies.map(({ id }) => id),
      );
    }
  },
});

const isDraft = (): boolean => openRunNow()?.run.state === 'draft';
const hasAny = onceFor((copies: Book['copy']) => Object.keys(copies).length > 0);
const anyCopies = (): boolean => hasAny(useShop.getState().book.copy);
const isWorking = (): boolean => usePlanning.getState().planning.kind === 'working';

export const layOutCommand: Command = {
  id: 'lay-out',
  label: 'layOut',
  scope: 'everywhere',
  chords: [{ key: 'Enter', mod: true }],
  available: () => mayWrite() && isDraft() && anyCopies() && !isWorking(),
  run: () => void layOut('pinned'),
};

export const placeWaitingCommand: Command = {
  id: 'place-waiting',
  label: 'placeWaiting',
  scope: 'everywhere',
  chords: [{ key: 'Enter', mod: true, shift: true }],
  available: () =>
    mayWrite() &&
    isDraft() &&
    !isWorking() &&
    Object.values(useShop.getState().book.copy).some((copy) => copy.place === null),
  run: () => void layOut('placed'),
};

export const stopCommand: Command = {
  id: 'stop',
  label: 'stop',
  scope: 'everywhere',
  chords: [{ key: '.', mod: true }],
  available: isWorking,
  run: settlePlanning,
};

export const turnCommand: Command = {
  id: 'turn',
  label: 'turn',
  scope: 'film',
  chords: [{ key: 'r' }],
  ...onSelected((_, ids) =>
    move(ids, (copy) => turnedInPlace(copy, turnedBy(copy.angle, copy.transfer.turn === 'half' ? 180 : 90))),
  ),
};

/** Degrees that a press of a key turns a copy by that may lie at any angle. */
const TURN_STEP = 15;

const turnByStep = (
  id: 'turn-on' | 'turn-back',
  label: Command['label'],
  key: string,
  by: number,
): Command => ({
  id,
  label,
  scope: 'film',
  chords: [{ key }],
  ...onSelected((_, ids) => move(ids, (copy) => turnedInPlace(copy, turnedBy(copy.angle, by)))),
});

export const pinCommand: Command = {
  id: 'pin',
  label: 'pin',
  scope: 'film',
  chords: [{ key: 'p' }],
  ...onSelected((copies, ids) => {
    const all = copies.every(({ pinned }) => pinned);
    act(filmEdits.setPinned(ids, !all));
  }),
};

export const takeOffCommand: Command = {
  id: 'take-off',
  label: 'takeOff',
  scope: 'film',
  chords: [{ key: 'Delete' }, { key: 'Backspace' }],
  ...onSelected((_, ids) => {
    act(filmEdits.takeOff(ids));
    select();
  }),
};

/** The direction of each arrow on the screen, as a step on the film: `sx = y`, `sy = W - x`. */
const arrows = {
  ArrowRight: { x: 0, y: 1 },
  ArrowLeft: { x: 0, y: -1 },
  ArrowUp: { x: 1, y: 0 },
  ArrowDown: { x: -1, y: 0 },
} as const;

/** How far an arrow moves a copy: to the next mark of the shop's ruler. */
export const nudgeStep = { mm: fromMm(1), in: fromInches(1 / 16) } as const;

function nudgeCommand(
  id: string,
  label: Command['label'],
  steps: number,
  modifiers: Omit<Chord, 'key'>,
): Command[] {
  return Object.entries(arrows).map(([key, step]) => ({
    id: `${id}-${key}`,
    label,
    scope: 'film',
    chords: [{ key, ...modifiers }],
    ...onSelected((_, ids) => {
      const far = steps * nudgeStep[settingsOrFirst(useShop.getState().book).unit];
      move(ids, (lying) => ({
        ...lying,
        x: um(lying.x + step.x * far),
        y: um(lying.y + step.y * far),
      }));
    }),
  }));
}

/** Brings all selected copies to the least of a coordinate: to one side, or to one line across the film. */
const alignCommand = (id: string, label: Command['label'], axis: 'x' | 'y', chord: Chord): Command => ({
  id,
  label,
  scope: 'film',
  chords: [chord],
  ...onSelected((copies, ids) => {
    const least = um(Math.min(...copies.map((copy) => copy[axis])));
    move(ids, (copy) => ({ ...copy, [axis]: least }));
  }, 2),
});

export const alignAcrossCommand = alignCommand('align-across', 'alignAcross', 'x', { key: 'e' });
export const alignAlongCommand = alignCommand('align-along', 'alignAlong', 'y', { key: 'f' });

/** Selects every copy of the orders that have one selected. */
export const selectOrderCommand: Command = {
  id: 'select-order',
  label: 'selectOrder',
  scope: 'film',
  chords: [{ key: 'o' }],
  available: () => selectedCopies().length > 0,
  run: () => {
    const orders = new Set(selectedCopies().map((copy) => copy.order.id));
    select(...(laidNow()?.copies ?? []).filter((copy) => orders.has(copy.order.id)).map(({ id }) => id));
  },
};

/** Lays out again only what lies from the first of the selected copies on. */
export const tightenCommand: Command = {
  id: 'tighten',
  label: 'tighten',
  scope: 'film',
  chords: [{ key: 't' }],
  available: () => mayWrite() && isDraft() && !isWorking() && movable().length > 0,
  run: () => void layOut({ before: um(Math.min(...movable().map(({ y }) => y))) }),
};

export const zoomToSelectionCommand: Command = {
  id: 'zoom-to-selection',
  label: 'zoomToSelection',
  scope: 'film',
  chords: [{ key: '2' }],
  available: () => selectedCopies().length > 0,
  run: () => fitIn(selectedCopies()),
};

const selectAllCommand: Command = {
  id: 'select-all',
  label: 'selectAll',
  scope: 'film',
  chords: [{ key: 'a', mod: true }],
  available: () => (laidNow()?.copies.length ?? 0) > 0,
  run: () => select(...(laidNow()?.copies ?? []).map(({ id }) => id)),
};

function selectNeighbour(by: 1 | -1): void {
  const copies = laidNow()?.copies ?? [];
  if (copies.length === 0) return;
  const { selected } = useView.getState();
  const now = copies.findIndex((copy) => selected.has(copy.id));
  const next = copies[now < 0 ? 0 : (now + by + copies.length) % copies.length];
  if (!next) return;
  select(next.id);
  reveal(next.y, next.y + next.length);
}

const onFilm = (id: string, label: Command['label'], chords: readonly Chord[], run: () => void): Command => ({
  id,
  label,
  scope: 'film',
  chords,
  available: () => laidNow() !== null,
  run,
});

export const cutMapCommand: Command = {
  id: 'cut-map',
  label: 'cutMap',
  scope: 'everywhere',
  chords: [],
  available: () => (laidNow()?.copies.length ?? 0) > 0,
  run: () => goTo('cut-map'),
};

export const printImageCommand: Command = {
  id: 'print-image',
  label: 'printImage',
  scope: 'everywhere',
  chords: [{ key: 's', mod: true }],
  available: () => (laidNow()?.copies.length ?? 0) > 0,
  run: () => openDialog({ kind: 'print-image' }),
};

export const zoomInCommand = onFilm('zoom-in', 'zoomIn', [{ key: '+' }, { key: '=' }], () => zoomBy(1.4));
export const zoomOutCommand = onFilm('zoom-out', 'zoomOut', [{ key: '-' }], () => zoomBy(1 / 1.4));
export const wholeWidthCommand = onFilm('whole-width', 'wholeWidth', [{ key: '1' }], () =>
  zoomTo(widthScale),
);
export const wholeRunCommand = onFilm('whole-run', 'wholeRun', [{ key: '0' }], () => zoomTo(runScale));

export const filmCommands: readonly Command[] = [
  layOutCommand,
  placeWaitingCommand,
  stopCommand,
  printImageCommand,
  onFilm('next', 'nextCopy', [{ key: 'n' }], () => selectNeighbour(1)),
  onFilm('previous', 'previousCopy', [{ key: 'n', shift: true }], () => selectNeighbour(-1)),
  turnCommand,
  turnByStep('turn-on', 'turnOn', '.', TURN_STEP),
  turnByStep('turn-back', 'turnBack', ',', -TURN_STEP),
  pinCommand,
  takeOffCommand,
  selectOrderCommand,
  selectAllCommand,
  tightenCommand,
  alignAcrossCommand,
  alignAlongCommand,
  ...nudgeCommand('nudge', 'nudge', 1, {}),
  ...nudgeCommand('nudge-far', 'nudgeFar', 10, { shift: true }),
  ...nudgeCommand('nudge-fine', 'nudgeFine', 0.1, { alt: true }),
  zoomInCommand,
  zoomOutCommand,
  wholeWidthCommand,
  wholeRunCommand,
  zoomToSelectionCommand,
  onFilm('pan-on', 'panOn', [{ key: 'PageDown' }], () => panBy(300, 0)),
  onFilm('pan-back', 'panBack', [{ key: 'PageUp' }], () => panBy(-300, 0)),
  onFilm('let-go', 'selectNothing', [{ key: 'Escape' }], () => select()),
];
