import * as z from 'zod/mini';
import {
  type Id,
  type Instant,
  instant,
  MODEL_VERSION,
  migrate,
  type Run,
  readRecord,
  type Spoilage,
  type Tick,
} from '../model';
import { fail, ok, type Result } from '../units';
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

/** What one device hands over to another. */
export type HandOver = { readonly made: Instant; readonly records: Records } & (
  | {
      /** A run with all that it takes to cut and press it. */
      readonly kind: 'run';
      readonly run: Run & { readonly received: NonNullable<Run['received']> };
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
  run: z.string().check(z.minLength(1)),
  name: z.string(),
  locked: instant,
  records: z.record(z.string(), z.unknown()),
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
  const { ticks, spoilages } = handOver.records;
  const about =
    kind === 'run'
      ? {
          run: handOver.run.id,
          name: handOver.run.name,
          locked: handOver.run.snapshot?.at ?? made,
          pictures: handOver.pictures,
        }
      : { run: handOver.run, name: handOver.name, locked: handOver.locked, pictures: {} };
  const content: Written = {
    format: 'rollwright hand-over',
    model: MODEL_VERSION,
    made,
    kind,
    ...about,
    records: Object.fromEntries<unknown>([
      ...(kind === 'run' ? [[`run/${handOver.run.id}`, handOver.run] as const] : []),
      ...ticks.map((tick) => [`tick/${tick.id}`, tick] as const),
      ...spoilages.map((spoilage) => [`spoilage/${spoilage.id}`, spoilage] as const),
    ]),
  };
  return seal(JSON.stringify(content), hash);
}

function parse(json: string): Written | null {
  try {
    const read = z.safeParse(written, JSON.parse(json));
    return read.success ? read.data : null;
  } catch {
    return null;
  }
}

/** Reads and verifies all of a hand-over before anything is done with it. */
export async function readHandOver(bytes: Uint8Array, hash: Hash): Promise<Result<HandOver, SealProblem>> {
  const text = await unseal(bytes, hash);
  if (!text.ok) return text;
  const content = parse(text.value);
  if (!content) return fail('damaged');
  if (content.model > MODEL_VERSION) return fail('newer');
  const migrated = migrate(new Map(Object.entries(content.records)), content.model);
  if (!migrated) return fail('damaged');
  let run: Run | null = null;
  const ticks: Tick[] = [];
  const spoilages: Spoilage[] = [];
  for (const [key, value] of migrated) {
    const [collection] = key.split('/');
    const of = collection === 'run' || collection === 'tick' || collection === 'spoilage' ? collection : null;
    const record = of && readRecord(of, value);
    if (!record || key !== `${of}/${record.id}`) return fail('damaged');
    if (of === 'run') run = record as Run;
    else if ((record as Tick | Spoilage).run !== content.run) return fail('damaged');
    else if (of === 'tick') ticks.push(record as Tick);
    else spoilages.push(record as Spoilage);
  }
  const { made, name, locked } = content;
  const records = { ticks, spoilages };
  if (content.kind === 'ticks')
    return ok({ kind: 'ticks', run: content.run as Id<'run'>, name, locked, made, records });
  const received = run?.received;
  if (!run || run.id !== content.run || !received || !run.snapshot) return fail('damaged');
  return ok({ kind: 'run', run: { ...run, received }, made, records, pictures: content.pictures });
}
