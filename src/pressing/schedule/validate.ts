import { type Schedule, type ScheduleProblem, setupTime } from './problem';

/** What is wrong with a schedule. */
export type ScheduleFault =
  | { readonly code: 'too-soon'; readonly task: number }
  | { readonly code: 'before-other'; readonly task: number; readonly other: number }
  | { readonly code: 'wrong-length'; readonly task: number }
  | { readonly code: 'at-once'; readonly task: number; readonly other: number; readonly resource: number };

/** Checks a schedule from its times alone: precedence, lengths, and that no unit does two things at once or without set-up. */
export function validateSchedule(
  { tasks, resources, now }: ScheduleProblem,
  { starts, ends, units }: Pick<Schedule, 'starts' | 'ends' | 'units'>,
): ScheduleFault[] {
  const faults: ScheduleFault[] = [];
  tasks.forEach(({ duration, after, fixed }, task) => {
    const start = starts[task] ?? Number.NaN;
    if (fixed) {
      if (start !== fixed.start || ends[task] !== fixed.end) faults.push({ code: 'wrong-length', task });
      return;
    }
    if (!(start >= now)) faults.push({ code: 'too-soon', task });
    if (ends[task] !== start + duration) faults.push({ code: 'wrong-length', task });
    for (const { task: other, lag } of after) {
      if (start < (ends[other] ?? Number.NaN) + lag) faults.push({ code: 'before-other', task, other });
    }
  });
  resources.forEach(({ units: own, setup }, resource) => {
    own.forEach((unit, index) => {
      const held = tasks
        .flatMap(({ uses, fixed }, task) =>
          fixed && fixed.end <= now
            ? []
            : uses.flatMap((use, at) =>
                use.resource === resource && units[task]?.[at] === index
                  ? [
                      {
                        task,
                        fixed: fixed !== null,
                        setting: use.setting,
                        from: (starts[task] ?? 0) + use.from,
                        to: Math.min(ends[task] ?? 0, (starts[task] ?? 0) + use.to),
                      },
                    ]
                  : [],
              ),
        )
        .filter(({ from, to }) => to > from)
        .sort((a, b) => a.from - b.from);
      held.forEach(({ task, from, setting, fixed }, at) => {
        if (fixed) return;
        const before = held[at - 1];
        const change = setup ? setupTime(setup, before?.setting ?? unit.setting, setting) : 0;
        const free = (before?.to ?? Math.max(unit.free, now)) + change;
        if (from < free) faults.push({ code: 'at-once', task, other: before?.task ?? task, resource });
      });
    });
  });
  return faults;
}
