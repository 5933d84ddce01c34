import { type Block, blocksOf } from './blocks';
import { type Decoded, type Decoder, decoderOf, place } from './decode';
import { inPlaces } from './moves';
import { followersOf } from './paths';
import type { ScheduleProblem } from './problem';

/**
 * The same work told from its end: what waits is waited for, what holds a unit from a task's start holds it to the end. Tasks
 * and blocks keep their numbers. What is fixed, when units are free and away, and what should not wait is left out: an order is found by it, not times.
 */
function mirrored({ tasks, resources, chains }: ScheduleProblem): ScheduleProblem {
  const followers = followersOf(tasks);
  return {
    now: 0,
    tasks: tasks.map(({ duration, uses, pauses, fixed }, index) => ({
      duration: fixed ? 0 : duration,
      uses: fixed ? [] : uses.map((use) => ({ ...use, from: duration - use.to, to: duration - use.from })),
      after: followers[index] ?? [],
      pauses,
      fixed: fixed && { start: 0, end: 0 },
    })),
    resources: resources.map(({ units }) => ({
      units: units.map(({ setup }) => ({
        free: 0,
        setup: setup && { cold: 0, rise: setup.fall, fall: setup.rise },
        setting: null,
        warmed: 0,
        away: [],
      })),
    })),
    chains: chains.map(({ tasks: chained, limit }) => ({ tasks: chained.toReversed(), limit })),
    waits: [],
    lanes: [],
    shelves: [],
    stints: [],
    dues: [],
  };
}

/** Places for blocks, the latest end first. */
function latestFirst(blocks: readonly Block[], lastOf: (block: Block) => number): Float64Array {
  const places = new Float64Array(blocks.length);
  for (const [index, block] of blocks.entries()) places[index] = -lastOf(block);
  return places;
}

/**
 * Pushes all tasks of a schedule as late as they can be without a later end, those that end last first, and gives the sequence
 * in which they then begin: decoded, it often leaves fewer gaps (double justification: Valls, Ballestin & Quintanilla, European
 * Journal of Operational Research 165(2), 375-386, 2005).
 */
export function justifier({ problem, blocks }: Decoder): (decoded: Decoded) => number[] {
  const mirror = mirrored(problem);
  const decoder = decoderOf(mirror, blocksOf(mirror));
  return ({ sequence, ends }) => {
    const backwards = inPlaces(
      decoder.blocks,
      sequence.toReversed(),
      latestFirst(blocks, ({ tasks }) => ends[tasks[tasks.length - 1] ?? 0] ?? 0),
    );
    decoder.placing.clear();
    place(decoder, backwards, null);
    const late = decoder.placing;
    return inPlaces(
      blocks,
      sequence,
      latestFirst(blocks, ({ tasks }) => late.ends[tasks[0] ?? 0] ?? 0),
    );
  };
}
