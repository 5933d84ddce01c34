import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { axisMarks, clearOf, dayRows, endLabel, fittingText } from '../../app/press/day-rows';
import { asId } from '../../src/model';
import type { Entry, JobKind } from '../../src/pressing';

const kinds: readonly JobKind[] = [
  'ready',
  'print',
  'cut-off',
  'powder',
  'cure',
  'line',
  'apart',
  'press',
  'again',
  'pack',
];

const entry = (
  key: string,
  kind: JobKind,
  code: string,
  start: number,
  length: number,
  isDone: boolean,
): Entry => ({
  job: {
    key,
    run: { id: asId('run'), name: 'Run 1' },
    kind,
    spans: [],
    order: ['press', 'again', 'pack'].includes(kind) ? { id: asId(code), code, tint: 0 } : null,
    transfers: [],
    copies: [],
    parts: [],
    fabric: null,
  },
  task: 0,
  start,
  end: start + length,
  state: isDone ? 'done' : 'ahead',
  takes: [],
  degrees: null,
});

const entries = fc
  .array(
    fc.tuple(
      fc.constantFrom(...kinds),
      fc.constantFrom('HR', 'CO', 'SF'),
      fc.nat(20_000),
      fc.integer({ min: 1, max: 900 }),
      fc.boolean(),
    ),
    { maxLength: 80 },
  )
  .map((all) =>
    all.map(([kind, code, start, length, isDone], at) => entry(`${at}`, kind, code, start, length, isDone)),
  );

describe('the rows of the day', () => {
  it('hold every job once, in lots that cover it', () => {
    fc.assert(
      fc.property(entries, fc.nat(600), (all, within) => {
        const lots = dayRows(all, within).flatMap((row) => row.lots);
        expect(lots.flatMap(({ jobs }) => jobs.map(({ key }) => key)).toSorted()).toEqual(
          all.map(({ job }) => job.key).toSorted(),
        );
        for (const { job, start, end } of all) {
          const lot = lots.find(({ jobs }) => jobs.includes(job));
          expect(lot && lot.from <= start && lot.to >= end).toBe(true);
        }
      }),
    );
  });

  it('part two lots of a kind in a row by more than what joins them, unless one is done', () => {
    fc.assert(
      fc.property(entries, fc.nat(600), (all, within) => {
        for (const { lots } of dayRows(all, within))
          for (const [at, lot] of lots.entries()) {
            const next = lots.slice(at + 1).find(({ kind }) => kind === lot.kind);
            if (next && next.isDone === lot.isDone) expect(next.from - lot.to).toBeGreaterThan(within);
          }
      }),
    );
  });

  it('are the steps of the film, then the orders by when they begin', () => {
    const rows = dayRows(
      [
        entry('a', 'pack', 'CO', 900, 60, false),
        entry('b', 'press', 'SF', 300, 60, false),
        entry('c', 'press', 'CO', 500, 60, false),
        entry('d', 'powder', '', 200, 60, false),
        entry('e', 'print', '', 0, 60, false),
        entry('f', 'again', 'CO', 590, 20, false),
      ],
      30,
    );
    expect(rows.map(({ of }) => (typeof of === 'string' ? of : of.code))).toEqual([
      'print',
      'cure',
      'SF',
      'CO',
    ]);
    expect(rows[3]?.lots.map(({ kind, from, to }) => [kind, from, to])).toEqual([
      ['press', 500, 610],
      ['pack', 900, 960],
    ]);
  });
});

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('the figures of the chart', () => {
  it('stand on the axis no nearer than they are wide, at whole steps of the clock', () => {
    fc.assert(
      fc.property(
        fc.nat(86_399),
        fc.integer({ min: 60, max: 400_000 }),
        fc.nat(200_000),
        positive(0.005, 2),
        (from, span, night, pixels) => {
          const to = from + span;
          const nights = [{ from: from + night, to: from + night + 50_000, cold: true }];
          const shown = (time: number) => time - from - Math.max(0, Math.min(50_000, time - from - night));
          const marks = axisMarks({ from, to, shown, nights }, pixels, 96);
          for (const [at, { time, before }] of marks.entries()) {
            expect(time % 300).toBe(0);
            expect(time <= from + night || time >= from + night + 50_000).toBe(true);
            expect(before).toBe(marks[at - 1]?.time);
            if (before !== undefined)
              expect((shown(time) - shown(before)) * pixels).toBeGreaterThanOrEqual(96 - 1e-6);
          }
        },
      ),
    );
  });

  it('at the end of a row lie neither over its bars nor beyond the chart', () => {
    fc.assert(
      fc.property(positive(64, 1200), positive(0, 1100), positive(10, 200), (from, length, width) => {
        const row = { from, to: Math.min(from + length, 1230) };
        fc.pre(row.to > row.from);
        const label = endLabel(row, width, { left: 64, right: 1280 });
        if (!label) return;
        const [start, end] =
          label.anchor === 'start' ? [label.x, label.x + width] : [label.x - width, label.x];
        expect(start >= row.to || end <= row.from).toBe(true);
        expect(start).toBeGreaterThanOrEqual(64);
        expect(end).toBeLessThanOrEqual(1280);
      }),
    );
  });
});

describe('a name on a bar', () => {
  it('has the room in which no other lot of its row begins, and none where one goes on', () => {
    fc.assert(
      fc.property(entries, fc.nat(600), (all, within) => {
        for (const { lots } of dayRows(all, within)) {
          const named = lots.filter(({ kind }) => kind !== 'pack');
          const texts = named.map((lot) => ({ from: lot.from, to: lot.from + clearOf(lot, lots), lot }));
          for (const { from, to, lot } of texts) {
            expect(to).toBeLessThanOrEqual(lot.to);
            for (const other of named) {
              const isOver = other !== lot && other.from < to && other.to > from;
              if (isOver && (other.from !== lot.from || other.to !== lot.to)) expect(to).toBe(from);
            }
          }
        }
      }),
    );
  });

  it('is the fullest that fits, and none where none does', () => {
    const fit = (room: number) => fittingText(['Run 2 · Ana', 'Run 2', ''], room, (text) => 6 * text.length);
    expect([80, 66, 65, 30, 29, -1].map(fit)).toEqual([
      'Run 2 · Ana',
      'Run 2 · Ana',
      'Run 2',
      'Run 2',
      null,
      null,
    ]);
  });
});
