import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { undo, useShop } from '../../../app/store/shop';
import { checkName, lastInitials, noteDone } from '../../../app/store/upkeep';
import { fetchAllWords } from '../../../app/words';
import { en } from '../../../app/words/en';
import { checksOf } from '../../../src/upkeep';
import { smallBook } from '../../editing/book';

const bookNow = () => useShop.getState().book;
const notes = () => Object.values(bookNow().upkeep);
const checks = checksOf(smallBook().book.check, 'mm');
const [check] = checks;
if (!check) throw new Error('no checks');

beforeAll(fetchAllWords);

beforeEach(() => {
  useShop.setState({ phase: { kind: 'open' }, follows: false, book: smallBook().book });
});

describe('a check that is noted', () => {
  const note = { check, machine: null };

  it('keeps whose initials it has, and undo leaves it', () => {
    expect(lastInitials(bookNow())).toBe('');
    noteDone(note, '', 'MK');
    expect(notes()).toHaveLength(1);
    expect(lastInitials(bookNow())).toBe('MK');
    undo();
    expect(notes()).toHaveLength(1);
  });

  it('is not noted while another tab writes', () => {
    useShop.setState({ follows: true });
    noteDone(note, '', 'MK');
    expect(notes()).toEqual([]);
  });

  it('gives the initials of the latest of checks and readings', () => {
    const { book } = smallBook();
    const at = (hour: number) => `2026-11-25T${hour}:00:00.000Z`;
    useShop.setState({ book });
    noteDone(note, '', 'MK');
    const [entry] = notes();
    if (!entry) throw new Error('nothing was noted');
    const later = { ...entry, id: 'later' as typeof entry.id, at: at(13) as typeof entry.at, by: 'JO' };
    const sooner = { ...entry, id: 'sooner' as typeof entry.id, at: at(11) as typeof entry.at, by: 'TT' };
    expect(lastInitials({ ...book, upkeep: { later, sooner } })).toBe('JO');
    expect(lastInitials({ ...book, upkeep: { sooner, later } })).toBe('JO');
  });
});

describe('the name of a check', () => {
  it('is the catalogue’s until the shop gives it another', () => {
    const starting = checks.map(({ id }) => checkName({ id, name: '' }, en));
    expect(new Set(starting).size).toBe(checks.length);
    expect(starting.every((name) => name.length > 3)).toBe(true);
    expect(checkName({ id: check.id, name: 'Nozzles' }, en)).toBe('Nozzles');
  });
});
