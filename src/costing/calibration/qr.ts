/** Columns of a matrix, all of one length, and at least as long as there are columns. */
export type Columns = readonly (readonly number[])[];

/** `R` as rows, upper triangular, and what `Q` transposed makes of the right-hand side: its first entries belong to `R`. */
interface Triangle {
  readonly r: readonly (readonly number[])[];
  readonly rotated: readonly number[];
  /** `|R_jj|` over the length of its column: how much of each column the ones before it do not tell. */
  readonly news: readonly number[];
}

export const dot = (a: readonly number[], b: readonly number[], from = 0): number => {
  let sum = 0;
  for (let index = from; index < a.length; index += 1) sum += (a[index] ?? 0) * (b[index] ?? 0);
  return sum;
};

export const norm = (a: readonly number[]): number => Math.hypot(...a);

/**
 * A = Q R by Householder reflections: P. Businger and G. H. Golub, Numerische Mathematik 7, 269-276, 1965, without exchanges of
 * columns.
 */
export function triangle(columns: Columns, right: readonly number[]): Triangle {
  const work = columns.map((column) => [...column]);
  const rotated = [...right];
  work.forEach((column, step) => {
    const below = Math.hypot(...column.slice(step));
    const head = column[step] ?? 0;
    if (below === 0) return;
    // Away from the head's sign, so that nothing cancels.
    const alpha = head > 0 ? -below : below;
    const mirror = column.map((value, row) => (row < step ? 0 : row === step ? value - alpha : value));
    const length = dot(mirror, mirror, step);
    const reflect = (vector: number[]) => {
      const share = (2 * dot(mirror, vector, step)) / length;
      for (let row = step; row < vector.length; row += 1)
        vector[row] = (vector[row] ?? 0) - share * (mirror[row] ?? 0);
    };
    for (const other of work.slice(step)) reflect(other);
    reflect(rotated);
  });
  const r = work.map((_, row) => work.map((column, at) => (at < row ? 0 : (column[row] ?? 0))));
  const news = columns.map((column, at) => Math.abs(r[at]?.[at] ?? 0) / (norm(column) || 1));
  return { r, rotated, news };
}

/** x of R x = b, from the last row up. */
export function backward(r: readonly (readonly number[])[], b: readonly number[]): number[] {
  const x = r.map(() => 0);
  for (let row = r.length - 1; row >= 0; row -= 1) {
    const own = r[row] ?? [];
    x[row] = ((b[row] ?? 0) - dot(own, x, row + 1)) / (own[row] ?? 0);
  }
  return x;
}

/** y of R' y = b, from the first row down. */
export function forward(r: readonly (readonly number[])[], b: readonly number[]): number[] {
  const y: number[] = [];
  r.forEach((own, row) => {
    let sum = b[row] ?? 0;
    for (let before = 0; before < row; before += 1) sum -= (r[before]?.[row] ?? 0) * (y[before] ?? 0);
    y.push(sum / (own[row] ?? 0));
  });
  return y;
}

/**
 * Largest over smallest singular value, by rotations that make the columns orthogonal in pairs: M. R. Hestenes, Journal of the
 * SIAM 6(1), 51-90, 1958.
 * @returns `Infinity` where a column is a sum of others
 */
export function conditionOf(columns: Columns): number {
  const work = columns.map((column) => [...column]);
  const SWEEPS = 30;
  for (let sweep = 0; sweep < SWEEPS; sweep += 1) {
    let turned = false;
    for (let left = 0; left < work.length; left += 1) {
      for (let right = left + 1; right < work.length; right += 1) {
        turned = orthogonalise(work[left] ?? [], work[right] ?? []) || turned;
      }
    }
    if (!turned) break;
  }
  const lengths = work.map(norm);
  const [most, least] = [Math.max(...lengths), Math.min(...lengths)];
  return least <= most * Number.EPSILON * columns.length ? Number.POSITIVE_INFINITY : most / least;
}

/** Turns two columns in their plane until they are orthogonal; false if they are already. */
function orthogonalise(a: number[], b: number[]): boolean {
  const [aa, bb, ab] = [dot(a, a), dot(b, b), dot(a, b)];
  if (ab === 0 || Math.abs(ab) <= Number.EPSILON * Math.sqrt(aa * bb)) return false;
  const zeta = (bb - aa) / (2 * ab);
  const tangent = (zeta < 0 ? -1 : 1) / (Math.abs(zeta) + Math.hypot(1, zeta));
  const cosine = 1 / Math.hypot(1, tangent);
  for (let row = 0; row < a.length; row += 1) {
    const [x, y] = [a[row] ?? 0, b[row] ?? 0];
    a[row] = cosine * (x - tangent * y);
    b[row] = cosine * (y + tangent * x);
  }
  return true;
}
