import { historyOf } from '../../src/editing';
import { mayWrite, redo, undo, useShop } from '../store/shop';
import type { Command } from './command';

export const undoCommand: Command = {
  id: 'undo',
  label: 'undo',
  scope: 'everywhere',
  chords: [{ key: 'z', mod: true }],
  available: () => mayWrite() && historyOf(useShop.getState().book).done.length > 0,
  run: undo,
};

export const redoCommand: Command = {
  id: 'redo',
  label: 'redo',
  scope: 'everywhere',
  chords: [
    { key: 'z', mod: true, shift: true },
    { key: 'y', mod: true },
  ],
  available: () => mayWrite() && historyOf(useShop.getState().book).undone.length > 0,
  run: redo,
};
