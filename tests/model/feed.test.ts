import { describe, expect, it } from 'vitest';
import { editPrinter, editSettings, lockRun, noteImage, setPlaces, unlockRun } from '../../src/editing';
import { handOverRun } from '../../src/hand-over';
import { type Book, firstOf, type Id, runViewOf } from '../../src/model';
import { fromMm, UPRIGHT } from '../../src/units';
import { edited, freshIds, NOW, smallBook } from '../editing/book';

const { book: empty, front } = smallBook();
const run = Object.keys(empty.run)[0] as Id<'run'>;
const first = Object.values(empty.copy).find(({ transfer }) => transfer === front) ?? expect.fail();
const at = { x: fromMm(5), y: fromMm(10), angle: UPRIGHT, pinned: false };

const corrected = (book: Book, feedCorrected: boolean) =>
  edited(book, (draft) => {
    const { shop } = book.settings;
    if (shop) editSettings(draft, { printImage: { ...shop.printImage, feedCorrected } });
  });
const locked = (book: Book) => edited(book, (draft) => lockRun(draft, run, freshIds()));
const written = (book: Book, feed: number) => edited(book, (draft) => noteImage(draft, run, feed));
const told = (book: Book) => {
  const { imageFeed, stretch } = runViewOf(book, run) ?? expect.fail();
  return { imageFeed, stretch };
};

const draft = edited(empty, (book) => {
  setPlaces(book, run, [[first.id, at]]);
  editPrinter(book, firstOf('printer'), { feed: 1.01 });
});
const asFed = { imageFeed: 1, stretch: 1.01 };
const asPlanned = { imageFeed: 1.01, stretch: 1 };

describe('the film of a run', () => {
  it('comes out by as much longer as the test strip did, or as planned where the image makes up for it', () => {
    expect(told(draft)).toEqual(asFed);
    expect(told(corrected(draft, true))).toEqual(asPlanned);
    expect(told(locked(draft))).toEqual(asFed);
    expect(told(locked(corrected(draft, true)))).toEqual(asPlanned);
  });

  it('follows the image that was written, whatever is chosen for the next one', () => {
    const plain = written(locked(draft), 1);
    expect(told(corrected(plain, true))).toEqual(asFed);
    const compensated = written(locked(corrected(draft, true)), 1.01);
    expect(told(corrected(compensated, false))).toEqual(asPlanned);
    expect(told(written(corrected(compensated, false), 1))).toEqual(asFed);
  });

  it('follows a strip that is measured after the image was written', () => {
    const before = written(locked(draft), 1.01);
    const after = edited(before, (book) => {
      editPrinter(book, firstOf('printer'), { feed: 1.02 });
    });
    expect(told(after).stretch).toBeCloseTo(1.02 / 1.01, 12);
  });

  it('is that of the next image where a run is a draft again', () => {
    const back = edited(written(locked(draft), 1.01), (book) => unlockRun(book, run, freshIds()));
    expect(told(back)).toEqual(asFed);
  });

  it('wants a new image each time that it is locked: what was written before may be of another layout', () => {
    const written1 = written(locked(draft), 1);
    expect(written1.run[run]?.imageFeed).toBe(1);
    const again = locked(edited(written1, (book) => unlockRun(book, run, freshIds())));
    expect(again.run[run]?.state).toBe('locked');
    expect(again.run[run]?.imageFeed).toBeNull();
    expect(locked(written(draft, 1)).run[run]?.imageFeed).toBeNull();
  });

  it('is told to a device that it is handed over to, which knows nothing of the printer', () => {
    const given = handOverRun(locked(draft), run, null, NOW);
    const received = given?.kind === 'run' ? given.run : expect.fail();
    const there = edited({ ...empty, run: { [run]: received } }, () => undefined);
    expect(told(there)).toEqual(asFed);
  });
});
