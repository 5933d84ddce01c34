import { describe, expect, it } from 'vitest';
import { type EditContext, edits, session } from '../../src/editing';
import { layRun, placesOf, problemOf } from '../../src/layout';
import { type Artwork, type ArtworkOutline, asId, type Film, OUTLINE_STEPS, runOf } from '../../src/model';
import { createPlanner } from '../../src/planning';
import { fromMm, toMm } from '../../src/units';
import { edited, freshIds, NOW, smallBook } from '../editing/book';

const CORNERS = 72;
/** A circle around the middle of a box, in shares of its side, the other way round for a hole. */
const circle = (radius: number, way: 1 | -1 = 1): number[] =>
  Array.from({ length: CORNERS }, (_, at) => (way * 2 * Math.PI * at) / CORNERS).flatMap((turn) =>
    [Math.cos(turn), Math.sin(turn)].map((side) => Math.round(OUTLINE_STEPS * (0.5 + radius * side))),
  );

const artworkOf = (id: string, outline: ArtworkOutline): Artwork => ({
  id: asId<'artwork'>(id),
  fileName: `${id}.png`,
  kind: 'png',
  pixels: { width: 10, height: 10 },
  density: null,
  trim: { x: 0, y: 0, width: 10, height: 10 },
  madeFrom: null,
  outline,
  outlinedBy: 1,
  changed: NOW,
});

/** A ring of 100 mm around a hole of 80 mm, and a disc of 50 mm; film that is as wide as the ring and its margins. */
function ringAndDisc(cutting: Film['cutting']) {
  const { book, front, tag } = smallBook();
  const shop = edited(book, (draft) => {
    for (const [id, side, outline] of [
      [front, 100, [circle(0.5), circle(0.4, -1)]],
      [tag, 50, [circle(0.5)]],
    ] as const) {
      const artwork = artworkOf(
        id,
        outline.map((line) => [...line]),
      );
      draft.artwork[artwork.id] = artwork;
      const transfer = draft.transfer[id];
      if (transfer)
        Object.assign(transfer, { width: fromMm(side), height: fromMm(side), artwork: artwork.id });
      const [, ...more] = Object.values(draft.copy).filter((copy) => copy.transfer === id);
      for (const copy of more) delete draft.copy[copy.id];
    }
    for (const film of Object.values(draft.film))
      Object.assign(film, { cutting, width: fromMm(110), gap: fromMm(5), spanMax: null });
  });
  const { run, film } = runOf(shop, null) ?? expect.fail();
  const problem = problemOf(shop, run, film, 'pinned');
  const planner = createPlanner(problem.problem, 1);
  planner.step(200);
  const laid = session(shop, edits.layOut(run.id, placesOf(planner.best(), problem, film)), freshIds());
  const own = layRun(laid.book, laid.book.run[run.id] ?? expect.fail()) ?? expect.fail();
  return { laid, run: own, film };
}

describe('a copy that has room in the hole of another', () => {
  it('lies in it where the shop cuts holes out, and takes no film: as much as the ring with its margins', () => {
    const { laid, run } = ringAndDisc('in-holes');
    expect(laid.takenOff).toEqual([]);
    expect(run.copies).toHaveLength(2);
    // A row is 1.5 mm.
    expect(toMm(run.lengthUsed)).toBeLessThan(120 + 1.5);
    const [ring, disc] = run.copies.toSorted((a, b) => b.width - a.width);
    if (!ring || !disc) return expect.fail();
    const middle = ({ x, y, width, length }: typeof ring) => [x + width / 2, y + length / 2] as const;
    const [[x0, y0], [x1, y1]] = [middle(ring), middle(disc)];
    // Radii of 40 and 25 mm and a gap of 5 mm leave 10 mm for their middles to be apart.
    expect(Math.hypot(x1 - x0, y1 - y0)).toBeLessThanOrEqual(10_000);
  });

  it('lies beside it where it does not', () => {
    for (const cutting of ['outlines', 'free'] as const) {
      const { run } = ringAndDisc(cutting);
      expect(toMm(run.lengthUsed)).toBeGreaterThan(150);
    }
  });

  it('comes off the film, and it is said, when the shop no longer cuts holes out (rule 5)', () => {
    const { laid, run, film } = ringAndDisc('in-holes');
    const context: EditContext = freshIds();
    const { id, changed, ...fields } = { ...film, cutting: 'outlines' as const };
    const after = session(laid.book, edits.chooseFilm(run.id, film.id, fields), context);
    expect(after.takenOff).toHaveLength(1);
    const back = layRun(after.book, after.book.run[run.id] ?? expect.fail());
    expect(back?.copies).toHaveLength(1);
  });
});
