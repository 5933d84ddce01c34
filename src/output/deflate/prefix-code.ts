/** A prefix code: for each symbol how long its code is, 0 where it has none, and the code with its first bit lowest. */
export interface PrefixCode {
  readonly lengths: Uint8Array;
  readonly codes: Uint16Array;
}

/**
 * How many leaves a tree of least weighted depth has at each depth: A. Moffat and J. Katajainen, "In-place calculation of
 * minimum-redundancy codes", WADS 1995.
 * @param weights at least two, from the least on; worked over
 */
function leavesByDepth(weights: Float64Array): number[] {
  const at = (index: number) => weights[index] as number;
  const count = weights.length;
  // Two by two the least are joined; a joined node takes the place of its first leaf, and then points to its parent.
  let [node, leaf] = [0, 0];
  for (let next = 0; next < count - 1; next += 1) {
    let sum = 0;
    for (let child = 0; child < 2; child += 1) {
      if (leaf < count && (node >= next || at(leaf) <= at(node))) {
        sum += at(leaf);
        leaf += 1;
      } else {
        sum += at(node);
        weights[node] = next;
        node += 1;
      }
    }
    weights[next] = sum;
  }
  // From the root down, parents turn into depths.
  weights[count - 2] = 0;
  for (let next = count - 3; next >= 0; next -= 1) weights[next] = at(at(next)) + 1;
  const leaves: number[] = [];
  let [places, inner] = [1, count - 2];
  for (let depth = 0; places > 0; depth += 1) {
    let joined = 0;
    while (inner >= 0 && at(inner) === depth) {
      joined += 1;
      inner -= 1;
    }
    leaves.push(places - joined);
    places = 2 * joined;
  }
  return leaves;
}

/** Brings leaves up to a depth: as many as are too deep are hung on others until the code is complete again (Kraft's sum is 1). */
function limitDepth(leaves: readonly number[], deepest: number): number[] {
  const limited = Array.from({ length: deepest + 1 }, (_, depth) => leaves[depth] ?? 0);
  const tooDeep = leaves.slice(deepest + 1).reduce((sum, count) => sum + count, 0);
  limited[deepest] = (limited[deepest] as number) + tooDeep;
  // In units of what a leaf of the greatest depth takes.
  let sum = limited.reduce((units, count, depth) => units + count * 2 ** (deepest - depth), 0);
  for (; sum > 2 ** deepest; sum -= 1) {
    let depth = deepest - 1;
    while (limited[depth] === 0) depth -= 1;
    limited[depth] = (limited[depth] as number) - 1;
    limited[depth + 1] = (limited[depth + 1] as number) + 2;
    limited[deepest] = (limited[deepest] as number) - 1;
  }
  return limited;
}

/** The codes that follow from their lengths (RFC 1951, 3.2.2), turned so that the first bit is the lowest. */
function codesOf(lengths: Uint8Array, leaves: readonly number[]): Uint16Array {
  const next: number[] = [0];
  for (let length = 1; length < leaves.length; length += 1) {
    next[length] = ((next[length - 1] as number) + (length === 1 ? 0 : (leaves[length - 1] as number))) << 1;
  }
  return Uint16Array.from(lengths, (length) => {
    if (length === 0) return 0;
    const code = next[length] as number;
    next[length] = code + 1;
    let turned = 0;
    for (let bit = 0; bit < length; bit += 1) turned |= ((code >>> bit) & 1) << (length - 1 - bit);
    return turned;
  });
}

/**
 * A code of next to least total length for symbols of some frequencies. At least two symbols have one, since not all decoders
 * take a code of fewer.
 * @param longest in bits; room for all symbols
 */
export function prefixCode(frequencies: Uint32Array, longest: number): PrefixCode {
  const used: number[] = [];
  for (let symbol = 0; symbol < frequencies.length; symbol += 1) {
    if ((frequencies[symbol] as number) > 0) used.push(symbol);
  }
  for (let symbol = 0; used.length < 2; symbol += 1) if (!used.includes(symbol)) used.push(symbol);
  used.sort((a, b) => (frequencies[a] as number) - (frequencies[b] as number) || a - b);
  const weights = Float64Array.from(used, (symbol) => frequencies[symbol] as number);
  const leaves = limitDepth(leavesByDepth(weights), longest);
  const lengths = new Uint8Array(frequencies.length);
  let next = 0;
  for (let length = longest; length > 0; length -= 1) {
    for (let count = leaves[length] as number; count > 0; count -= 1) {
      lengths[used[next] as number] = length;
      next += 1;
    }
  }
  return { lengths, codes: codesOf(lengths, leaves) };
}
