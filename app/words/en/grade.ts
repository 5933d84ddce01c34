import type { Verdict } from '../../../src/artwork';

export const grade = {
  names: { good: 'good', meant: 'intended', check: 'check', poor: 'poor' } satisfies Record<Verdict, string>,
  checking: 'checking',
  notChecked: 'not checked',
  look: (name: string, grade: string) => `Artwork of ${name}: ${grade}. See what will print`,
};
