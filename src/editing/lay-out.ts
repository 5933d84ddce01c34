import type { Copy, Film, Id, Place } from '../model';
import { alsoByQuarters } from '../units';
import { addFilm, editFilm } from './films';
import { setPlaces } from './places';
import { editRun } from './runs';
import { type Drawn, drawFirst } from './shelf';
import type { BookDraft, EditContext } from './step';
import { editTransfer } from './transfers';

type Places = readonly (readonly [Id<'copy'>, Place | null])[];

/** Takes what waits for a run from the shelf before it is printed. */
export function drawForRun(draft: BookDraft, id: Id<'run'>): Drawn[] {
  const takesAll = draft.run[id]?.takes === 'all';
  return drawFirst(draft, ({ run }: Copy) => run === id || (run === null && takesAll));
}

/** Puts a layout on a draft's film. Copies that lie on the shelf are taken from there. */
export function layOut(draft: BookDraft, run: Id<'run'>, places: Places): void {
  const own = draft.run[run];
  if (own?.state === 'draft') {
    drawForRun(draft, run);
    // What of it was printed by outlines lies as it was printed.
    own.laidBy = 'boxes';
  }
  setPlaces(draft, run, places);
}

/** Another way to lay a run out, and how its copies lie then. */
export interface OtherWay {
  /** What it takes to have it: a film in stock, other settings of one, a film that is new, or transfers that turn. */
  readonly takes: 'film' | 'settings' | 'new-film' | 'turns';
  readonly film: Film;
  readonly places: Places;
}

/** Lays a run out as it was found, on the film and with the settings that it was found for. */
export function takeWay(
  draft: BookDraft,
  run: Id<'run'>,
  { takes, film, places }: OtherWay,
  context: EditContext,
): void {
  const { id, changed: _, ...fields } = film;
  if (takes === 'new-film') editRun(draft, run, { film: addFilm(draft, fields, context) });
  else {
    if (takes === 'settings') editFilm(draft, id, fields, context);
    editRun(draft, run, { film: id });
  }
  if (takes === 'turns') {
    for (const [copy] of places) {
      const transfer = draft.transfer[draft.copy[copy]?.transfer ?? ''];
      if (transfer) editTransfer(draft, transfer.id, { turn: alsoByQuarters(transfer.turn) });
    }
  }
  setPlaces(draft, run, places);
}
