import type { Work } from '../../src/pressing';
import { useWays } from '../store/selectors';
import { useWords } from '../words';
import { shortLength } from '../words/format';

/** Names what is larger than the press or than what it is cured on, before the run is locked. */
export function TooLargeNotes({ tooLarge }: { tooLarge: Work['tooLarge'] }) {
  const { film: words } = useWords();
  const ways = useWays();
  return tooLarge.map((large) => (
    <p className="care small" key={large.kind === 'span' ? large.span : large.transfer.id}>
      {large.kind === 'span'
        ? words.tooLargeSpan(large.span, shortLength(large.length, ways), ways)
        : words.tooLargeTransfer(large.order?.code ?? '', large.transfer.name)}
    </p>
  ));
}
