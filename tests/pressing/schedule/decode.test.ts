import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { validateSchedule } from '../../../src/pressing/schedule';
import { blocksOf } from '../../../src/pressing/schedule/blocks';
import { decode, decoderOf, decodeWithin, scheduleOf } from '../../../src/pressing/schedule/decode';
import { justifier } from '../../../src/pressing/schedule/justify';
import { inPlaces } from '../../../src/pressing/schedule/moves';
import { everyRule, sequencesBy } from '../../../src/pressing/schedule/rules';
import { smallShop, smallShopWithTrays, smallStint, taskOn, unit } from '../shops';

/** A small shop made ready, and two sequences of its blocks by places drawn at random. */
const sequences = fc
  .tuple(fc.oneof(smallShop, smallShopWithTrays, smallStint), fc.infiniteStream(fc.nat(100)))
  .map(([problem, places]) => {
    const blocks = blocksOf(problem);
    const decoder = decoderOf(problem, blocks);
    const [first] = everyRule;
    const rule = first ? sequencesBy(decoder)(first) : [];
    const drawn = () =>
      inPlaces(
        blocks,
        rule,
        Float64Array.from(blocks, () => Number(places.next().value)),
      );
    return { problem, decoder, one: drawn(), other: drawn() };
  });

describe('a sequence', () => {
  it('has the same schedule, whether its beginning is taken over from another or not', () => {
    fc.assert(
      fc.property(sequences, ({ decoder, one, other }) => {
        const near = decode(decoder, one);
        const afresh = decode(decoder, other);
        expect(decode(decoder, other, near)).toEqual(afresh);
      }),
    );
  });

  it('is decoded within a cost, or not at all if it costs more', () => {
    fc.assert(
      fc.property(sequences, fc.integer({ min: -3, max: 3 }), ({ decoder, one }, more) => {
        const schedule = decode(decoder, one);
        expect(decodeWithin(decoder, one, schedule.cost + more)).toEqual(more < 0 ? null : schedule);
      }),
    );
  });

  it('is a right one still when its schedule was pushed late and back', () => {
    fc.assert(
      fc.property(sequences, ({ problem, decoder, one }) => {
        const justified = justifier(decoder)(decode(decoder, one));
        expect(justified.toSorted()).toEqual(one.toSorted());
        expect(validateSchedule(problem, scheduleOf(decoder, decode(decoder, justified)))).toEqual([]);
      }),
    );
  });
});

describe('a schedule with a gap', () => {
  it('is closed by pushing it late and back', () => {
    // Hands do first what could wait, and the printer waits for what they do then.
    const problem = {
      now: 0,
      tasks: [taskOn(4, 1), taskOn(1, 1), taskOn(8, 0, [1])],
      resources: [{ units: [unit] }, { units: [unit] }],
      chains: [],
      waits: [],
      lanes: [],
      shelves: [],
      stints: [],
      dues: [],
    };
    const decoder = decoderOf(problem, blocksOf(problem));
    const loose = decode(decoder, [0, 1, 2]);
    const tight = decode(decoder, justifier(decoder)(loose));
    expect(loose.makespan).toBe(13);
    expect(tight.makespan).toBe(9);
  });
});
