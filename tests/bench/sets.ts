import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { rollUsed } from '../packing/used';
import { type Instance, problemOf, readInstance } from './instance';
import { bestOfPackers } from './packers';
import { planFor } from './plan-for';
import { type Result, resultOf } from './result';
import { mean, printTable } from './table';

const FOLDER = new URL('../../../shared/benchmarks/', import.meta.url).pathname;

interface Known {
  readonly known?: { readonly bestLength?: number | null; readonly bestSheets?: number | null };
}

type Check = (
  instance: Instance,
  result: Result,
) => { readonly ok: boolean; readonly problems: readonly string[]; readonly gapPercent: number | null };

interface Set {
  readonly name: string;
  readonly folder: string;
  /** Files of it; all, if it is left out. */
  readonly only?: (instance: Instance) => boolean;
  /** Every piece may turn, whatever the file says. */
  readonly turning?: true;
  /** Seconds for an instance, in shares of what was asked for. */
  readonly share: number;
}

const isRoll = ({ film }: Instance): boolean => film.kind === 'roll';
const isCut = ({ spanMax }: Instance): boolean => typeof spanMax === 'number';

const sets: readonly Set[] = [
  { name: 'strips C (Hopper & Turton 2001), as published', folder: 'strip/C', share: 1 },
  { name: 'strips C, turning allowed', folder: 'strip/C', turning: true, share: 1 },
  { name: 'perfect days', folder: 'perfect', share: 2.5 },
  {
    name: 'shop days on rolls, not cut',
    folder: 'shop',
    only: (day) => isRoll(day) && !isCut(day),
    share: 2.5,
  },
  {
    name: 'shop days on rolls, cut into spans',
    folder: 'shop',
    only: (day) => isRoll(day) && isCut(day),
    share: 2.5,
  },
  { name: 'shop days on sheets', folder: 'shop', only: (day) => !isRoll(day), share: 2.5 },
  { name: 'sheets CLASS (Berkey & Wang 1987; Martello & Vigo 1998)', folder: 'bins/CLASS', share: 1 },
];

const percent = (value: number) => `${value.toFixed(2)}%`;

/** The instances of a set, and what is known of them. */
function* instancesOf({
  folder,
  only,
  turning,
}: Set): Generator<{ file: string; raw: Instance & Known; instance: Instance }> {
  for (const file of readdirSync(join(FOLDER, folder)).filter((name) => name.endsWith('.json'))) {
    const read: Instance & Known = JSON.parse(readFileSync(join(FOLDER, folder, file), 'utf8'));
    const pieces = turning
      ? read.pieces.map((piece) => ({ ...piece, turn: 'quarter' as const }))
      : read.pieces;
    const raw = { ...read, pieces };
    const instance = readInstance(raw);
    if (only?.(instance) ?? true) yield { file, raw, instance };
  }
}

/** Plans every instance of the published sets and prints a line per set. Every plan passes the independent checker, or it throws. */
export async function benchSets(seconds: number, seed: number): Promise<void> {
  if (!existsSync(FOLDER)) {
    console.log('No published instances: ../shared/benchmarks is missing, so no sets are run.');
    return;
  }
  const { checkPlan } = (await import(pathToFileURL(join(FOLDER, 'check-plan.mjs')).href)) as {
    checkPlan: Check;
  };
  const lines = sets.map((set) => {
    const limit = seconds * set.share;
    const rows = [...instancesOf(set)].map(({ file, raw, instance }) => {
      const run = planFor(problemOf(instance), { seconds: limit, seed });
      const result = resultOf(instance, run.plan, run.bound, limit);
      const { ok, problems, gapPercent } = checkPlan(raw, result);
      if (!ok) throw new Error(`${file}: ${problems.join(' ')}`);
      const used = result.lengthUsed ?? result.sheetsUsed ?? 0;
      const best = raw.known?.bestLength ?? raw.known?.bestSheets ?? null;
      const least = result.leastLength ?? result.leastSheets ?? used;
      return { used, best, least, gap: gapPercent ?? 0, firstMs: run.firstMs };
    });
    const known = rows.filter(({ best }) => best !== null);
    const sum = (pick: (row: (typeof rows)[number]) => number) =>
      rows.reduce((total, row) => total + pick(row), 0);
    const firsts = rows.map(({ firstMs }) => firstMs);
    const total = known.length > 0 ? sum(({ best }) => best ?? 0) : sum(({ least }) => least);
    return [
      set.name,
      rows.length,
      `${limit} s`,
      known.length > 0 ? percent(mean(known.map(({ gap }) => gap))) : '',
      known.length > 0 ? `${known.filter(({ gap }) => gap < 1e-6).length} of ${known.length}` : '',
      percent(mean(rows.map(({ used, least }) => 100 * (used / least - 1)))),
      percent(100 * (sum(({ used }) => used) / total - 1)),
      `${mean(firsts).toFixed(1)} ms`,
    ];
  });
  printTable(
    'Published and invented sets, one core, every plan checked',
    [
      'set',
      'instances',
      'each',
      'mean gap to best',
      'at best',
      'mean over own bound',
      'total over best or bound',
      'first layout',
    ],
    lines,
  );
}

/** Compares shop days on uncut rolls with the general-purpose packers of npm. */
export function benchPackers(seconds: number, seed: number): void {
  if (!existsSync(FOLDER)) return;
  const rolls = sets.find(({ only, folder }) => folder === 'shop' && only);
  if (!rolls) return;
  const rows = [...instancesOf(rolls)].map(({ file, instance }) => {
    const problem = problemOf(instance);
    const ours = rollUsed(planFor(problem, { seconds: seconds * rolls.share, seed }).plan).length;
    const theirs = bestOfPackers(problem, 20);
    return { file, ours, theirs, ratio: ours / theirs };
  });
  const mm = (length: number) => (length / 1000).toFixed(1);
  printTable(
    'Length against the best of the npm packers, 20 s each',
    ['day', 'ours, mm', 'theirs, mm', 'ratio'],
    [
      ...rows.map(({ file, ours, theirs, ratio }) => [file, mm(ours), mm(theirs), ratio.toFixed(4)]),
      ['mean', '', '', mean(rows.map(({ ratio }) => ratio)).toFixed(4)],
    ],
  );
}
