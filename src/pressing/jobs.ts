import type { LaidCopy } from '../layout';
import type { Id, Run } from '../model';
import type { Span } from '../packing';
import type { Fabric, Micrometres } from '../units';
import type { ScheduleProblem } from './schedule';

/** What is done to a run from the printer to the bag. `again` is the second press, or the peeling of cold film before it. */
export type JobKind =
  | 'ready'
  | 'print'
  | 'cut-off'
  | 'powder'
  | 'cure'
  | 'line'
  | 'apart'
  | 'press'
  | 'again'
  | 'pack';

/** One task of the bench, as a person would name it; run and key tell it from all others. */
export interface Job {
  /** Stays the same while the run is locked: what is ticked names it. */
  readonly key: string;
  readonly run: Pick<Run, 'id' | 'name'>;
  readonly kind: JobKind;
  /** Spans of the film, from 0. */
  readonly spans: readonly number[];
  readonly order: LaidCopy['order'] | null;
  /** Those that are pressed at once; none for what is not pressed. */
  readonly transfers: readonly LaidCopy['transfer'][];
  readonly copies: readonly Id<'copy'>[];
  /** What is ticked one by one on the way: when all of it is, the job is done. */
  readonly parts: readonly string[];
  /** What is pressed on; `null` while nobody has told, and for all other work. */
  readonly fabric: Fabric | null;
}

/** What does the work; the press cures as well, where nothing else does. */
export type Worker = 'printer' | 'hands' | 'press' | 'oven';

/** What there may be several of, each by its own name. A line powders and cures, and stands in an oven's place. */
export type MachineKind = 'printer' | 'press' | 'oven' | 'line' | 'person';

/** One of those that do a kind of work. */
export interface Machine {
  readonly kind: MachineKind;
  readonly id: string;
  /** What the shop calls it; empty where its number tells it. */
  readonly name: string;
  /** Among its kind, from 1. */
  readonly number: number;
  /** How many of its kind there are. */
  readonly of: number;
}

/** Work at the bench: the schedule's problem, and what its tasks and resources are. */
export interface Work {
  readonly problem: ScheduleProblem;
  /** As long as the problem's tasks, in the same order. */
  readonly jobs: readonly Job[];
  readonly workers: readonly Worker[];
  /** The units of each resource, as long as the workers. */
  readonly machines: readonly (readonly Machine[])[];
  readonly spans: readonly Span[];
  /** Film wider than what it is cured on, spans larger than that, and transfers that the press does not take. */
  readonly tooLarge: readonly TooLarge[];
}

export type TooLarge =
  /** Wider, however it is laid, than what it is cured on takes. */
  | {
      readonly kind: 'film';
      readonly run: Job['run'];
      readonly width: Micrometres;
      readonly takes: Micrometres;
      /** What takes the widest film. */
      readonly machine: Machine | null;
    }
  | { readonly kind: 'span'; readonly run: Job['run']; readonly span: number; readonly length: Micrometres }
  | {
      /** Larger than the press, or on a cap, which no flat platen takes. */
      readonly kind: 'transfer' | 'cap';
      readonly run: Job['run'];
      readonly transfer: LaidCopy['transfer'];
      readonly order: Job['order'];
    };
