import type { Aim } from './aim';
import type { Limits, Way } from './build';
import type { Sequence } from './sequence';
import type { Strip } from './strip';
import { type Trial, trialOf } from './trial';

const ANY = Number.POSITIVE_INFINITY;

const NOTHING: Sequence = { piece: [], count: [], turned: [] };

/** One way to build layouts, and the sequences that it has done best with. */
export class Lane {
  readonly way: Way;
  /** The sequence that takes least film, and how much. */
  best = NOTHING;
  bestCost = ANY;
  /** The sequence that annealing has come to. */
  current = NOTHING;
  currentCost = ANY;
  /** Cycles of annealing that it has had. */
  cycles = 0;
  // The sequence that left least area out of the film being tried, and how much film.
  private fitting = NOTHING;
  private fittingCost = ANY;
  private fittingFilm = ANY;
  private readonly strip: Strip;
  private readonly limits: Limits;

  constructor(way: Way, strip: Strip, limits: Limits) {
    this.way = way;
    this.strip = strip;
    this.limits = limits;
  }

  /** Builds a sequence. */
  build(sequence: Sequence, aim: Aim): Trial {
    const { way, strip } = this;
    const build = way.decoder.decode(sequence, way.rule, aim.kind === 'fit' ? aim.limits : this.limits);
    return trialOf(build, aim, strip);
  }

  /** Keeps a sequence that takes less film than all before. */
  keepIfBetter(sequence: Sequence, film: number): void {
    if (film >= this.bestCost) return;
    this.best = sequence;
    this.bestCost = film;
  }

  /** Begins a cycle, from the sequence that has come nearest to what it is after. */
  begin(aim: Aim): void {
    this.cycles += 1;
    if (aim.kind === 'film') {
      this.current = this.best;
      this.currentCost = this.bestCost;
      return;
    }
    if (this.fittingFilm !== aim.film) {
      this.fitting = this.best;
      this.fittingFilm = aim.film;
      this.fittingCost = this.build(this.best, aim).cost;
    }
    this.current = this.fitting;
    this.currentCost = this.fittingCost;
  }

  /** Goes on from a sequence that annealing has accepted. */
  accept(sequence: Sequence, { cost, film }: Trial, aim: Aim): void {
    this.current = sequence;
    this.currentCost = cost;
    if (aim.kind === 'fit' && cost < this.fittingCost) {
      this.fitting = sequence;
      this.fittingCost = cost;
    }
    this.keepIfBetter(sequence, film);
  }
}
