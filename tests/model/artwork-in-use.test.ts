import { describe, expect, it } from 'vitest';
import { applyEdit, type BookDraft, remember, removeTransfer, setArtwork } from '../../src/editing';
import { type Artwork, artworkInUse, type Book } from '../../src/model';
import { edited, freshIds, NOW, smallBook } from '../editing/book';

const artwork = (id: string, madeFrom: string | null = null): Artwork => ({
  id: id as Artwork['id'],
  fileName: `${id}.png`,
  kind: 'png',
  pixels: { width: 10, height: 10 },
  density: null,
  trim: { x: 0, y: 0, width: 10, height: 10 },
  outline: null,
  outlinedBy: 0,
  madeFrom:
    madeFrom === null
      ? null
      : {
          artwork: madeFrom as Artwork['id'],
          by: { kind: 'knock-out', colour: '#ffffff', tolerance: 20, reach: 'from-edge' },
        },
  changed: NOW,
});

/** An edit that undo can take back. */
function undoable(book: Book, edit: (draft: BookDraft) => void): Book {
  const { book: after, step } = applyEdit(book, edit, NOW);
  return step ? remember(after, step, NOW) : after;
}

describe('artwork whose file is still needed', () => {
  it('is what a transfer has, and what that was made from', () => {
    const { book, front } = smallBook();
    const given = edited(book, (draft) => {
      draft.artwork.first = artwork('first');
      setArtwork(draft, front, artwork('made', 'first'), freshIds());
      draft.artwork.other = artwork('other');
    });
    expect(artworkInUse(given)).toEqual(new Set(['made', 'first']));
  });

  it('is what undo could bring back: one that was replaced, one whose transfer is gone', () => {
    const { book, front, tag } = smallBook();
    const given = edited(book, (draft) => {
      setArtwork(draft, front, artwork('before'), freshIds());
      setArtwork(draft, tag, artwork('tag'), freshIds());
    });
    const replaced = undoable(given, (draft) => setArtwork(draft, front, artwork('after'), freshIds()));
    const removed = undoable(replaced, (draft) => removeTransfer(draft, tag));
    expect(artworkInUse(removed)).toEqual(new Set(['after', 'before', 'tag']));
  });
});
