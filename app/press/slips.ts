/** Most lines of a slip, where so many slips lie on a sheet; a longer one has a sheet of its own. */
const rooms = [
  { up: 4, lines: 12 },
  { up: 2, lines: 18 },
] as const;

/** Slips that share a sheet, to be cut apart. */
export interface SlipSheet<Slip> {
  readonly up: 1 | 2 | 4;
  readonly slips: readonly Slip[];
}

/**
 * Puts slips on sheets, four or two on each where they are short enough, in their order among those of a kind.
 * @param linesOf how many lines a slip's contents take
 */
export function sheetsOfSlips<Slip>(
  slips: readonly Slip[],
  linesOf: (slip: Slip) => number,
): SlipSheet<Slip>[] {
  const upOf = (slip: Slip) => rooms.find(({ lines }) => linesOf(slip) <= lines)?.up ?? 1;
  return ([4, 2, 1] as const).flatMap((up) => {
    const own = slips.filter((slip) => upOf(slip) === up);
    return Array.from({ length: Math.ceil(own.length / up) }, (_, sheet) => ({
      up,
      slips: own.slice(sheet * up, (sheet + 1) * up),
    }));
  });
}
