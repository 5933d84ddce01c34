import * as z from 'zod/mini';
import {
  type Id,
  type Instant,
  id,
  instant,
  type LockedRun,
  MODEL_VERSION,
  readKept,
  type Spoilage,
  type Tick,
} from '../model';
import { fail, ok, type Result } from '../units';
import { fromColumns, toColumns } from './columns';
import { type Hash, type SealProblem, seal, unseal } from './sealed';

/** What was ticked and spoiled on a run. */
export interface Records {
  readonly ticks: readonly Tick[];
  readonly spoilages: readonly Spoilage[];
}

/** A small picture of an artwork, as its thumbnail is kept. */
export interface Picture {
  readonly type: string;
  readonly base64: string;
}

/** A run as it is handed over: with how it is cured and pressed. */
type ReceivedRun = LockedRun & { readonly received: NonNullable<LockedRun['received']> };

/** What one device hands over to another. */
export type HandOver = { readonly made: Instant; readonly records: Records } & (
  | {
      /** A run with all that it takes to cut and press it. */
      readonly kind: 'run';
      readonly run: ReceivedRun;
      /** By the artwork's id. */
      readonly pictures: Readonly<Record<string, Picture>>;
    }
  | {
      /** What was ticked on a run that was handed over before. */
      readonly kind: 'ticks';
      readonly run: Id<'run'>;
      readonly name: string;
      /** When the run that they were made on had been locked. */
      readonly locked: Instant;
    }
);

const written = z.object({
  format: z.literal('rollwright hand-over'),
  /** Of the records: they are brought up from an older one. */
  model: z.int(),
  made: instant,
  kind: z.enum(['run', 'ticks']),
  run: id<'run'>(),
  name: z.string(),
  locked: instant,
  records: z.object({
    run: z.array(z.unknown()),
    tick: z.array(z.unknown()),
    spoilage: z.array(z.unknown()),
  }),
  pictures: z.record(
    z.string(),
    z.object({
      type: z.string().check(z.regex(/^image\/(png|webp|jpeg)$/)),
      base64: z.string().check(z.regex(/^[A-Za-z0-9+/]+=*$/)),
    }),
  ),
});

type Written = z.infer<typeof written>;

/** Writes a hand-over as sealed bytes: what a file holds, and what codes carry part by part. */
export function writeHandOver(handOver: HandOver, hash: Hash): Promise<Uint8Array<ArrayBuffer>> {
  const { kind, made } = handOver;
  const about =
    kind === 'run'
      ? {
          run: handOver.run.id,
          name: handOver.run.name,
          locked: handOver.run.snapshot.at,
          pictures: handOver.pictures,
        }
      : { run: handOver.run, name: handOver.name, locked: handOver.locked, pictures: {} };
  const content: Written = {
    format: 'rollwright hand-over',
    model: MODEL_VERSION,
    made,
    kind,
    ...about,
    records: {
      run: kind === 'run' ? [handOver.run] : [],
      tick: [...handOver.records.ticks],
      spoilage: [...handOver.records.spoilages],
    },
  };
  return seal(JSON.stringify(toColumns(content)), hash);
}

function parse(json: string): Written | null {
  try {
    const read = z.safeParse(written, fromColumns(JSON.parse(json)));
    return read.success ? read.data : null;
  } catch {
    return null;
  }
}

const collections = ['run', 'tick', 'spoilage'] as const;

const idOf = (record: unknown): string =>
  typeof record === 'object' && record !== null && 'id' in record ? String(record.id) : '';

/** Records as they lie in storage, for the migrations; one without an id is found out by its schema. */
const keyed = (records: Written['records']): Map<string, unknown> =>
  new Map(
    collections.flatMap((name) =>
      records[name].map((record) => [`${name}/${idOf(record)}`, record] as const),
    ),
  );

/** Reads and verifies all of a hand-over before anything is done with it. */
export async function readHandOver(bytes: Uint8Array, hash: Hash): Promise<Result<HandOver, SealProblem>> {
  const text = await unseal(bytes, hash);
  if (!text.ok) return text;
  const content = parse(text.value);
  if (!content) return fail('damaged');
  const kept = await readKept(keyed(content.records), content.model);
  if (!kept.ok) return kept;
  const { book, setAside } = kept.value;
  if (setAside.length > 0) return fail('damaged');
  const [ticks, spoilages] = [Object.values(book.tick), Object.values(book.spoilage)];
  if ([...ticks, ...spoilages].some(({ run }) => run !== content.run)) return fail('damaged');
  const { made, name, locked } = content;
  const records = { ticks, spoilages };
  if (content.kind === 'ticks') return ok({ kind: 'ticks', run: content.run, name, locked, made, records });
  const [run] = Object.values(book.run);
  if (!run || run.state === 'draft' || run.id !== content.run || !run.received) return fail('damaged');
  const { received } = run;
  return ok({ kind: 'run', run: { ...run, received }, made, records, pictures: content.pictures });
}
