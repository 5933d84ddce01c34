import fc from 'fast-check';
import type {
  Available,
  Away,
  Due,
  Lane,
  ScheduleProblem,
  ShelfLoad,
  Task,
} from '../../src/pressing/schedule';

/** A unit that is always there, and is not set up. */
export const unit: Available = { free: 0, setup: null, setting: null, warmed: 0, away: [] };

/** Jobs over machines, one unit each: every job a route of (machine, time), one operation after the other. */
export function jobShop(jobs: readonly (readonly (readonly [number, number])[])[]): ScheduleProblem {
  const machines = Math.max(...jobs.flat().map(([machine]) => machine)) + 1;
  const tasks = jobs.flatMap((route, job) => {
    const first = jobs.slice(0, job).reduce((sum, other) => sum + other.length, 0);
    return route.map(([machine, time], at) => ({
      duration: time,
      uses: [{ resource: machine, from: 0, to: time, units: null, setting: 0 }],
      after: at === 0 ? [] : [{ task: first + at - 1, lag: 0 }],
      pauses: false,
      fixed: null,
    }));
  });
  return {
    now: 0,
    tasks,
    resources: Array.from({ length: machines }, () => ({
      units: [unit],
    })),
    chains: [],
    waits: [],
    lanes: [],
    shelves: [],
    stints: [],
    dues: [],
  };
}

/** A flow shop: every job visits the machines in their order. */
export const flowShop = (times: readonly (readonly number[])[]): ScheduleProblem =>
  jobShop(times.map((job) => job.map((time, machine) => [machine, time] as const)));

/**
 * The random flow shops of E. Taillard, "Benchmarks for basic scheduling problems", European Journal of Operational Research
 * 64(2), 278-285, 1993: a linear congruential generator (Bratley, Fox & Schrage 1983) fills the times machine by machine.
 */
export function taillard(jobs: number, machines: number, seed: number): number[][] {
  let state = seed;
  const draw = () => {
    state = (16807 * state) % 2147483647;
    return Math.floor(1 + (state / 2147483647) * 99);
  };
  const byMachine = Array.from({ length: machines }, () => Array.from({ length: jobs }, draw));
  return Array.from({ length: jobs }, (_, job) => byMachine.map((times) => times[job] ?? 0));
}

/** Johnson's rule: S. M. Johnson, Naval Research Logistics Quarterly 1(1), 61-68, 1954. The shortest makespan on two machines. */
export function johnson(times: readonly (readonly [number, number])[]): number {
  const first = times.filter(([a, b]) => a <= b).sort((x, y) => x[0] - y[0]);
  const second = times.filter(([a, b]) => a > b).sort((x, y) => y[1] - x[1]);
  let [doneA, doneB] = [0, 0];
  for (const [a, b] of [...first, ...second]) {
    doneA += a;
    doneB = Math.max(doneA, doneB) + b;
  }
  return doneB;
}

/** A task that holds one resource all the time, behind others. */
export const taskOn = (duration: number, resource: number, after: number[] = []): Task => ({
  duration,
  uses: [{ resource, from: 0, to: duration, units: null, setting: 0 }],
  after: after.map((before) => ({ task: before, lag: 0 })),
  pauses: false,
  fixed: null,
});

/** Small problems: up to five tasks over hands and one press that is set up. */
export const smallShop = fc
  .record({
    hands: fc.integer({ min: 1, max: 2 }),
    cold: fc.integer({ min: 0, max: 2 }),
    tasks: fc.array(
      fc.record({
        duration: fc.integer({ min: 1, max: 3 }),
        hands: fc.boolean(),
        press: fc.boolean(),
        setting: fc.integer({ min: 1, max: 2 }),
        after: fc.array(fc.record({ task: fc.nat(4), lag: fc.integer({ min: 0, max: 1 }) }), {
          maxLength: 2,
        }),
      }),
      { minLength: 1, maxLength: 5 },
    ),
  })
  .map(
    ({ hands, cold, tasks }): ScheduleProblem => ({
      now: 0,
      resources: [
        { units: Array.from({ length: hands }, () => unit) },
        { units: [{ ...unit, setup: { cold, rise: 1, fall: 2 } }] },
      ],
      tasks: tasks.map((task, index) => ({
        duration: task.duration,
        uses: [
          // The hands are free again before the press is.
          ...(task.hands
            ? [{ resource: 0, from: 0, to: Math.min(1, task.duration), units: null, setting: 0 }]
            : []),
          ...(task.press
            ? [{ resource: 1, from: 0, to: task.duration, units: null, setting: task.setting }]
            : []),
        ],
        after: task.after.filter((before) => before.task < index),
        pauses: false,
        fixed: null,
      })),
      chains: [],
      waits: [],
      lanes: [],
      shelves: [],
      stints: [],
      dues: [],
    }),
  );

/** Up to three times at which something is away, so far apart and so long at the most. */
export const gaps = (apart: number, longest: number): fc.Arbitrary<Away[]> =>
  fc
    .array(fc.tuple(fc.integer({ min: 1, max: apart }), fc.integer({ min: 1, max: longest }), fc.boolean()), {
      maxLength: 3,
    })
    .map((all) => {
      const away: Away[] = [];
      for (const [after, length, cold] of all) {
        const from = (away.at(-1)?.to ?? 0) + after;
        away.push({ from, to: from + length, cold });
      }
      return away;
    });

/** A break of everybody, and perhaps a night in which the press goes cold. */
const closed = fc
  .record({
    from: fc.integer({ min: 1, max: 6 }),
    length: fc.integer({ min: 1, max: 3 }),
    cold: fc.boolean(),
  })
  .map(({ from, length, cold }) => [{ from, to: from + length, cold }]);

/** Film by a printer that is cut off, behind what is printed, and powdered by hand before it has lain wet too long; nobody is there in a break. */
export function wetFilm(
  prints: readonly { print: number; cut: number; powder: number }[],
  limit: number,
  away: Away[],
): ScheduleProblem {
  const held = (duration: number, resources: readonly number[], after: readonly number[]): Task => ({
    ...taskOn(duration, 0, [...after]),
    uses: resources.map((resource) => ({ resource, from: 0, to: duration, units: null, setting: 0 })),
  });
  const tasks = prints.flatMap(({ print, cut, powder }, at) => [
    held(print, [0], at === 0 ? [] : [3 * at - 2]),
    held(cut, [0, 1], [3 * at]),
    held(powder, [1], [3 * at + 1]),
  ]);
  return {
    now: 0,
    tasks,
    resources: [[], away].map((own) => ({ units: [{ ...unit, away: own }] })),
    chains: prints.map((_, at) => ({ tasks: [3 * at, 3 * at + 1, 3 * at + 2], limit })),
    waits: [],
    lanes: [],
    shelves: [],
    stints: [],
    dues: [],
  };
}

const short = fc.integer({ min: 1, max: 2 });

/** Small days of wet film, with a break of the hands. */
export const smallWetFilm = fc
  .record({
    prints: fc.array(fc.record({ print: fc.integer({ min: 1, max: 4 }), cut: short, powder: short }), {
      minLength: 1,
      maxLength: 2,
    }),
    limit: fc.integer({ min: 1, max: 4 }),
    away: closed,
  })
  .map(({ prints, limit, away }) => wetFilm(prints, limit, away));

/**
 * Small days of film that lies on trays between powder and cure: two printers, each with a run of up to two spans that are cured
 * together or one by one, no more of them at once than there are trays.
 */
export const smallShopWithTrays = fc
  .record({
    trays: fc.integer({ min: 1, max: 2 }),
    isTogether: fc.boolean(),
    cold: fc.integer({ min: 0, max: 4 }),
    cure: fc.integer({ min: 1, max: 3 }),
    runs: fc.tuple(
      fc.array(short, { minLength: 1, maxLength: 2 }),
      fc.array(short, { minLength: 1, maxLength: 1 }),
    ),
  })
  .map(({ trays, isTogether, cold, cure, runs }): ScheduleProblem => {
    const tasks: Task[] = [];
    const loads: ShelfLoad[] = [];
    const most = isTogether ? trays : 1;
    runs.forEach((prints, printer) => {
      let lying: number[] = [];
      prints.forEach((time, at) => {
        const before = tasks.findLastIndex(({ uses }) => uses[0]?.resource === printer);
        tasks.push(taskOn(time, printer, before < 0 ? [] : [before]));
        lying.push(tasks.length - 1);
        if (lying.length < most && at < prints.length - 1) return;
        tasks.push({
          ...taskOn(cure, 2, lying),
          uses: [{ resource: 2, from: 0, to: cure, units: null, setting: 1 }],
        });
        loads.push({ fills: lying, clearedBy: tasks.length - 1, lag: 1 });
        lying = [];
      });
    });
    return {
      now: 0,
      tasks,
      resources: [
        { units: [unit] },
        { units: [unit] },
        { units: [{ ...unit, setup: { cold, rise: 1, fall: 2 } }] },
      ],
      chains: [],
      waits: [],
      lanes: [],
      shelves: [{ places: trays, loads }],
      stints: [],
      dues: [],
    };
  });

/** Small days of film that is printed without a pause, then powdered bit by bit before all is switched off; hands have something else to do. */
export const smallStint = fc
  .record({
    prints: fc.array(short, { minLength: 1, maxLength: 2 }),
    powder: short,
    other: fc.integer({ min: 1, max: 3 }),
    night: fc.integer({ min: 2, max: 7 }),
  })
  .map(({ prints, powder, other, night }): ScheduleProblem => {
    const away = [{ from: night, to: night + 2, cold: true }];
    const tasks = [
      ...prints.map((time, at) => taskOn(time, 0, at === 0 ? [] : [at - 1])),
      ...prints.map((_, at) =>
        taskOn(powder, 1, [prints.length - 1, ...(at === 0 ? [] : [prints.length + at - 1])]),
      ),
      taskOn(other, 1),
    ];
    return {
      now: 0,
      tasks,
      resources: [0, 1].map(() => ({ units: [{ ...unit, away }] })),
      chains: prints.length > 1 ? [{ tasks: [0, 1], limit: 0 }] : [],
      waits: [],
      lanes: [],
      shelves: [],
      stints: [{ first: 0, tasks: prints.map((_, at) => prints.length + at) }],
      dues: [],
    };
  });

/** Which of two units may take something. */
const eligible = fc.constantFrom(null, [0], [1], [0, 1]);

/** Small problems of two pairs of hands and two presses, not all of which may take everything. */
export const smallShopOfUnlike = fc
  .tuple(smallShop, fc.array(eligible, { minLength: 10, maxLength: 10 }))
  .map(
    ([problem, own]): ScheduleProblem => ({
      ...problem,
      resources: problem.resources.map(({ units: [only] }) => ({
        units: only ? [only, only] : [],
      })),
      tasks: problem.tasks.map((task, index) => ({
        ...task,
        uses: task.uses.map((use) => ({ ...use, units: own[2 * index + use.resource] ?? null })),
      })),
    }),
  );

/** How a unit is now: cold, warming up since a while, or hot. */
const state = fc.oneof(
  fc.integer({ min: 0, max: 2 }).map((warmed) => ({ setting: null, warmed })),
  fc.integer({ min: 1, max: 2 }).map((setting) => ({ setting, warmed: 0 })),
);
const rate = fc.integer({ min: 0, max: 3 });

/** Small problems of two presses, each of which heats and cools at its own rate, from its own temperature. */
export const smallShopOfUnlikeHeat = fc
  .tuple(
    smallShop,
    fc.array(fc.tuple(fc.record({ cold: rate, rise: rate, fall: rate }), state), {
      minLength: 2,
      maxLength: 2,
    }),
  )
  .map(
    ([problem, presses]): ScheduleProblem => ({
      ...problem,
      resources: problem.resources.map((resource, at) =>
        at === 1 ? { units: presses.map(([setup, own]) => ({ ...unit, setup, ...own })) } : resource,
      ),
    }),
  );

/** Jobs of one length that each go to some machines of a kind, each of which is away at times of its own. */
export const onSome = (
  machines: readonly (readonly Away[])[],
  jobs: readonly (readonly number[])[],
): ScheduleProblem => ({
  now: 0,
  tasks: jobs.map((units) => ({
    duration: 1,
    uses: [{ resource: 0, from: 0, to: 1, units, setting: 0 }],
    after: [],
    pauses: false,
    fixed: null,
  })),
  resources: [{ units: machines.map((away) => ({ ...unit, away })) }],
  chains: [],
  waits: [],
  lanes: [],
  shelves: [],
  stints: [],
  dues: [],
});

/**
 * The shortest makespan of such jobs: the set of machines that takes longest over the jobs that go to no other (P. Hall, "On
 * representatives of subsets", Journal of the London Mathematical Society 10, 26-30, 1935: slots of machines, without those in which
 * one is away, are matched to jobs).
 */
export function mostLoadedSet(
  machines: readonly (readonly Away[])[],
  jobs: readonly (readonly number[])[],
): number {
  let most = 0;
  for (let set = 1; set < 2 ** machines.length; set += 1) {
    const isIn = (machine: number) => (set >> machine) % 2 === 1;
    const own = machines.filter((_, machine) => isIn(machine));
    let left = jobs.filter((job) => job.every(isIn)).length;
    let time = 0;
    for (; left > 0; time += 1) {
      const now = time;
      left -= own.filter((away) => !away.some(({ from, to }) => from <= now && now < to)).length;
    }
    most = Math.max(most, time);
  }
  return most;
}

/** Small problems whose hands, press or both are away for a time. */
export const smallShopWithBreak = fc
  .record({ problem: smallShop, away: closed, hands: fc.boolean(), press: fc.boolean() })
  .map(({ problem, away, hands, press }): ScheduleProblem => {
    const isAway = [hands, press];
    return {
      ...problem,
      resources: problem.resources.map(({ units }, resource) => ({
        units: units.map((own) => ({ ...own, away: isAway[resource] ? away : [] })),
      })),
    };
  });

/**
 * Small days: two runs, one printed in up to two goes, and pressed after each; hands have a break in which the printer goes on. Each
 * run's last is due.
 */
export const smallDay = fc
  .record({
    runs: fc.tuple(
      ...[2, 1].map((maxLength) =>
        fc.record({
          spans: fc.array(
            fc.record({
              print: fc.integer({ min: 1, max: 3 }),
              press: fc.integer({ min: 1, max: 2 }),
              setting: fc.integer({ min: 1, max: 2 }),
            }),
            { minLength: 1, maxLength },
          ),
          due: fc.integer({ min: 4, max: 12 }),
          weight: fc.constantFrom(1, 3),
        }),
      ),
    ),
    away: closed,
  })
  .map(({ runs, away }): ScheduleProblem => {
    const tasks: Task[] = [];
    const lanes: Lane[] = [];
    const dues: Due[] = [];
    for (const { spans, due, weight } of runs) {
      const prints = spans.map(({ print }, at) => {
        tasks.push(taskOn(print, 0, at === 0 ? [] : [tasks.length - 1]));
        return tasks.length - 1;
      });
      lanes.push({ resource: 0, first: prints[0] ?? 0, last: prints.at(-1) ?? 0, rank: 0 });
      spans.forEach(({ press, setting }, at) => {
        const uses = [1, 2].map((resource) => ({ resource, from: 0, to: press, units: null, setting }));
        const after = [{ task: prints[at] ?? 0, lag: 0 }];
        tasks.push({ duration: press, uses, after, pauses: false, fixed: null });
        dues.push({ task: tasks.length - 1, at: due, weight });
      });
    }
    return {
      now: 0,
      tasks,
      resources: [
        { units: [unit] },
        { units: [{ ...unit, away: away.map((gap) => ({ ...gap, cold: false })) }] },
        { units: [{ ...unit, setup: { cold: 2, rise: 1, fall: 2 }, away }] },
      ],
      chains: [],
      waits: [],
      lanes,
      shelves: [],
      stints: [],
      dues,
    };
  });
