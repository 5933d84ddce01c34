import fc from 'fast-check';
import { fromMm, um } from '../../src/units';

/** A share of something, by which an act finds its copy, its place or its amount in whatever book there is. */
const share = fc.nat({ max: 999 }).map((parts) => parts / 1000);
const mm = (least: number, most: number) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((tenths) => fromMm(tenths / 10));
const gap = fc.integer({ min: 0, max: 40 }).map((half) => um(half * 200));
const cutting = fc.constantFrom(
  'free' as const,
  'outlines' as const,
  'in-holes' as const,
  'straight' as const,
  'staged' as const,
);
const together = fc.constantFrom(
  { kind: 'any' } as const,
  { kind: 'near', share: 0.05 } as const,
  { kind: 'apart' } as const,
  { kind: 'by-due' } as const,
);
const turn = fc.constantFrom('fixed' as const, 'quarter' as const);

/** What a film may be changed to at any time. */
const changes = fc.record(
  {
    width: mm(120, 330),
    gap,
    cutting,
    together,
    margins: fc.record({ left: mm(0, 8), right: mm(0, 8), lead: mm(0, 15), tail: mm(0, 15) }),
    curl: mm(0, 5),
  },
  { requiredKeys: [] },
);
const rollChanges = fc.record(
  {
    lengthLeft: mm(200, 2000),
    spanMax: fc.option(mm(80, 400), { nil: null }),
    cutBlank: mm(0, 20),
    unreached: mm(0, 50),
    noPrint: fc.array(
      fc.tuple(mm(0, 600), mm(1, 60)).map(([from, long]) => ({ from, to: um(from + long) })),
      { maxLength: 2 },
    ),
  },
  { requiredKeys: [] },
);
const sheetChanges = fc.record(
  { length: mm(180, 420), sheetsLeft: fc.nat({ max: 6 }) },
  { requiredKeys: [] },
);

const transfer = fc.record({ order: share, width: mm(10, 110), height: mm(10, 110), turn });

/** Where a hand lays a copy: a gap beside another, behind all others, or anywhere. */
const spot = fc.oneof(
  fc.record({
    at: fc.constant('beside' as const),
    other: share,
    side: fc.constantFrom('left', 'right', 'before', 'behind'),
  }),
  fc.record({ at: fc.constant('behind-all' as const), x: share }),
  fc.record({ at: fc.constant('anywhere' as const), x: share, y: share }),
);
const move = fc.record({ kind: fc.constant('move'), which: share, to: spot, turns: fc.boolean() });

const layOut = fc.record({
  kind: fc.constant('lay-out'),
  keep: fc.constantFrom('pinned', 'placed', 'before'),
  at: share,
});

/** What somebody may do to a layout. */
const act = fc.oneof(
  { arbitrary: layOut, weight: 3 },
  fc.record({ kind: fc.constant('fill') }),
  fc.record({ kind: fc.constant('again') }),
  fc.record({ kind: fc.constant('put-back'), which: share }),
  { arbitrary: move, weight: 4 },
  fc.record({ kind: fc.constant('pin'), which: share, pinned: fc.boolean() }),
  fc.record({ kind: fc.constant('take-off'), which: share }),
  fc.record({ kind: fc.constant('resize'), which: share, to: transfer }),
  fc.record({ kind: fc.constant('count'), which: share, count: fc.nat({ max: 6 }), filler: fc.boolean() }),
  fc.record({ kind: fc.constant('film'), to: changes, roll: rollChanges, sheets: sheetChanges }),
  fc.record({ kind: fc.constant('printed'), to: share }),
  fc.record({ kind: fc.constant('spoil'), from: share, long: mm(1, 200) }),
  // Quiet edits: undo leaves them alone, and every state that it leads to has them.
  fc.record({ kind: fc.constant('currency'), to: fc.constantFrom('USD', 'JPY', 'SEK') }),
  fc.record({ kind: fc.constant('settings'), inkUp: fc.constantFrom('plain', 'mirrored') }),
  fc.record({ kind: fc.constant('undo'), times: fc.integer({ min: 1, max: 4 }) }),
  fc.record({ kind: fc.constant('redo'), times: fc.integer({ min: 1, max: 4 }) }),
);
export type Act = typeof act extends fc.Arbitrary<infer Any> ? Any : never;

/** A shop with a film of any kind, some orders that are laid out, and what is done to their layout, one act after the other. */
export const anyDay = fc.record({
  onSheets: fc.boolean(),
  film: changes,
  roll: rollChanges,
  sheets: sheetChanges,
  transfers: fc.array(fc.tuple(transfer, fc.integer({ min: 1, max: 5 }), fc.nat({ max: 3 })), {
    minLength: 1,
    maxLength: 4,
  }),
  acts: fc
    .tuple(layOut, fc.array(act, { minLength: 1, maxLength: 10, size: 'max' }))
    .map(([first, acts]): Act[] => [first, ...acts]),
});
export type Day = typeof anyDay extends fc.Arbitrary<infer Any> ? Any : never;
