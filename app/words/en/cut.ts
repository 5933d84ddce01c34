import { counted, type Ways, whole } from '../format';

export const cut = {
  title: 'Cut',
  span: (span: number, of: number, ways: Ways) => `Span ${whole(span + 1, ways)} of ${whole(of, ways)}`,
  spanChoice: 'Span',
  copyOf: (index: number, of: number, ways: Ways) => `Copy ${whole(index, ways)} of ${whole(of, ways)}`,
  cutOf: (index: number, of: number, ways: Ways) => `Cut ${whole(index, ways)} of ${whole(of, ways)}`,
  across: (length: string) => `Across, ${length} from the front edge of the piece in your hand`,
  along: (length: string) => `Lengthwise, ${length} from its near side`,
  off: (count: number, ways: Ways) => `${counted(count, 'copy', 'copies', ways)} on what comes off`,
  frees: (names: string) => `sets free ${names}`,
  take: (name: string) => `Take out ${name}`,
  done: 'Done, next',
  back: 'One back',
  allCut: (count: number, ways: Ways) => `This span is cut: ${counted(count, 'copy', 'copies', ways)}.`,
  nextSpan: 'Next span',
  pile: 'What the pile must hold',
  pileOf: (code: string, cut: number, of: number, ways: Ways) =>
    `${code}: ${whole(cut, ways)} of ${whole(of, ways)}`,
  pileAll: 'The pile of the whole run',
  map: 'Cut map',
  nothing: 'Nothing lies on this run’s film yet, so there is nothing to cut.',
  draft: 'This run is still a draft: its layout may change. Lock it for print before you cut.',
  before: 'Cut apart before the powder: keep the wet ink from touching anything.',
  after: 'Cut apart after the cure.',
  plan: 'The span; what is to be cut now is marked',
};
