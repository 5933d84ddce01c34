export const strip = {
  title: 'Test strip',
  intro:
    'Print this strip once on each printer, with its own software set as for any job. Then say what came out; the print-ready image and the cut map follow.',
  save: 'Save the test strip',
  fileName: 'rollwright test strip.png',
  firstEnd: 'Which end came out first?',
  ends: { lead: 'END 1', tail: 'END 2' },
  inkUp: 'How does the F read, ink up?',
  shows: { mirrored: 'mirrored, as is usual', plain: 'rightly' },
  measured: 'From bar to bar, measured',
  feed: (measure: string, factor: string) =>
    `${measure} on the strip, between the inner edges of the two bars. Distances are multiplied by ${factor} now.`,
  implausible: (measure: string) =>
    `That is more than 5% from ${measure}, which no feed is. Measure again between the inner edges of the bars.`,
  after: 'Keep hands and scissors away from the print head while the strip comes out.',
  reset: 'As if none was printed',
};
