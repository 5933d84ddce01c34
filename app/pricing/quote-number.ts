import type { Quote } from '../../src/model';

/** A quote's number as it is written: `0007`. */
export const quoteNumber = ({ number }: Pick<Quote, 'number'>): string => String(number).padStart(4, '0');
