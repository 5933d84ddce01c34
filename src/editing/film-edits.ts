import { keepOutline, readArtworkAgain } from './artwork';
import { editsOf } from './edit';
import { drawForRun, layOut } from './lay-out';
import { beginRun, finishRunAndGoOn } from './next-run';
import { setPinned, setPlaces, takeOff } from './places';
import { addRun, reopenRun, unlockRun } from './runs';

/**
 * What the Film room does to a book, by what it is to history. It is apart from the rest of `edits`, which the first screen does without.
 */
export const filmEdits = {
  ...editsOf('step', { setPlaces, setPinned, takeOff, drawForRun, layOut }),
  ...editsOf('none', { readArtworkAgain, keepOutline }),
  ...editsOf('forget', { addRun, beginRun, unlockRun, finishRun: finishRunAndGoOn, reopenRun }),
};
