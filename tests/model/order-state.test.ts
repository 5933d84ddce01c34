import { describe, expect, it } from 'vitest';
import { addRun, lockRun, setCount, setPlaces } from '../../src/editing';
import { copiesBeyond, type Id, restBeside } from '../../src/model';
import { fromMm, UPRIGHT } from '../../src/units';
import { edited, freshIds, orderStateIn, smallBook } from '../editing/book';

const { book: empty, order, front, tag } = smallBook();
const [first] = Object.values(empty.run);
const [film] = Object.values(empty.film);
if (!first || !film) throw new Error('no run');
const copiesOf = (transfer: Id<'transfer'>) =>
  Object.values(empty.copy).flatMap((copy) => (copy.transfer === transfer ? [copy.id] : []));
const lying = (ids: readonly Id<'copy'>[]) =>
  ids.map(
    (id, index) => [id, { x: fromMm(5), y: fromMm(10 + 90 * index), angle: UPRIGHT, pinned: false }] as const,
  );

describe('an order whose copies are on several films', () => {
  let second = '' as Id<'run'>;
  const split = edited(empty, (draft) => {
    second = addRun(draft, { name: 'Run 2', film: film.id }, freshIds());
    setPlaces(draft, first.id, lying(copiesOf(front).slice(0, 2)));
    setPlaces(draft, second, lying(copiesOf(tag).slice(0, 1)));
    // Fillers are welcome, not missed.
    setCount(draft, front, 4, freshIds(), 'filler');
  });

  it('tells of each run what the bag lacks', () => {
    const beyond = (...runs: string[]) => copiesBeyond(split, (run) => runs.includes(run))(order);
    expect(beyond(first.id)).toEqual({ waiting: 2, elsewhere: 1 });
    expect(beyond(second)).toEqual({ waiting: 2, elsewhere: 2 });
    expect(beyond(first.id, second)).toEqual({ waiting: 2, elsewhere: 0 });
    expect(beyond()).toEqual({ waiting: 2, elsewhere: 3 });
  });

  it('names the runs that bring the rest: those behind follow, one that is further on came', () => {
    const rest = (book: typeof split, run: string) => restBeside(book, book.run[run] ?? expect.fail())(order);
    expect(rest(split, first.id)).toEqual({ came: [], follows: ['Run 2'], waiting: 2 });
    expect(rest(split, second)).toEqual({ came: [first.name], follows: [], waiting: 2 });
    const ahead = edited(split, (draft) => lockRun(draft, second, freshIds()));
    expect(rest(ahead, first.id)).toEqual({ came: ['Run 2'], follows: [], waiting: 2 });
    expect(rest(ahead, second)).toEqual({ came: [], follows: [first.name], waiting: 2 });
  });

  it('lacks nothing once all lie on one film', () => {
    const whole = edited(empty, (draft) =>
      setPlaces(draft, first.id, lying([...copiesOf(front), ...copiesOf(tag)])),
    );
    const beyond = copiesBeyond(whole, (run) => run === first.id);
    expect(beyond(order)).toEqual({ waiting: 0, elsewhere: 0 });
    expect(beyond('another')).toEqual({ waiting: 0, elsewhere: 0 });
  });

  it('is in a run as soon as a copy of it lies on one, locked or not', () => {
    expect(orderStateIn(empty, order)).toBe('ready');
    expect(orderStateIn(split, order)).toBe('in-run');
    const locked = edited(split, (draft) => lockRun(draft, first.id, freshIds()));
    expect(orderStateIn(locked, order)).toBe('in-run');
  });
});
