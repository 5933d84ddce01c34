import type { Aim } from './aim';
import type { Build } from './build';
import { costOf } from './layout';
import type { Strip } from './strip';

/** A build, overwritten by the next one of its decoder, with what it costs. */
export interface Trial {
  readonly build: Build;
  /** What the aim is to make small. */
  readonly cost: number;
  /** Its film; infinite while it leaves out copies of an aim to fit. */
  readonly film: number;
}

/** What a build costs an aim that it was made for. */
export function trialOf(build: Build, aim: Aim, strip: Strip): Trial {
  if (aim.kind === 'film') {
    const film = costOf(build, strip);
    return { build, cost: film, film };
  }
  const film = build.unplacedArea === 0 ? costOf(build, strip) : Number.POSITIVE_INFINITY;
  return { build, cost: build.unplacedArea / strip.width, film };
}
