/** Sizes closer than this share are the same: an image has whole pixels. */
const SAME = 0.015;

export const differs = (a: number, b: number): boolean => Math.abs(a - b) > SAME * Math.max(a, b);
