import type { Stage } from '../../../src/model';

export const spoil = {
  title: 'A copy is spoiled',
  copy: 'Copy',
  stage: 'Spoiled',
  stages: {
    print: 'in print',
    powder: 'in powder',
    cure: 'in cure',
    cut: 'in cutting',
    press: 'at the press',
  } satisfies Record<Stage, string>,
  reason: 'Why',
  otherReason: 'another reason',
  newReason: 'Another reason',
  reasonNeeded: 'Say why in a word or two, so that it can be mended.',
  garment: 'The garment is spoiled too',
  save: 'Reprint',
  note: (name: string) => `${name} is back on the list for another run.`,
  onlyPrinted:
    'Copies can be spoiled once the run is printed. Until then use “Spoiled from – to” in the Film room.',
};
