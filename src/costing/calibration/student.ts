/**
 * The probability that Student's t of so many degrees of freedom lies between -t and t, in closed form: M. Abramowitz and
 * I. A. Stegun, Handbook of Mathematical Functions, NBS Applied Mathematics Series 55, 1964, 26.7.3 and 26.7.4.
 * @param freedom a whole number from 1 on
 */
export function withinT(t: number, freedom: number): number {
  const theta = Math.atan(t / Math.sqrt(freedom));
  const square = Math.cos(theta) ** 2;
  const isOdd = freedom % 2 === 1;
  // 1 + 1/2 cos^2 + (1 3)/(2 4) cos^4 + ..., or cos (1 + 2/3 cos^2 + (2 4)/(3 5) cos^4 + ...)
  let term = isOdd ? Math.cos(theta) : 1;
  let sum = 0;
  for (let last = isOdd ? 1 : 0; last <= freedom - 2; last += 2) {
    sum += term;
    term *= ((last + 1) / (last + 2)) * square;
  }
  return isOdd ? (2 / Math.PI) * (theta + Math.sin(theta) * sum) : Math.sin(theta) * sum;
}

/**
 * t of which Student's distribution lies between -t and t with a probability, by halving until nothing changes.
 * @param probability above 0 and below 1
 */
export function studentT(probability: number, freedom: number): number {
  let low = 0;
  let high = 1;
  while (withinT(high, freedom) < probability) high *= 2;
  for (;;) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) return middle;
    if (withinT(middle, freedom) < probability) low = middle;
    else high = middle;
  }
}
