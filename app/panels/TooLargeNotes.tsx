import type { Work } from '../../src/pressing';
import { useWays } from '../store/selectors';
import { useWords } from '../words';
import { shortLength } from '../words/format';
import { machineName } from './machine-name';

/** Names what is larger than the press or than what it is cured on, before the run is locked. */
export function TooLargeNotes({ tooLarge }: { tooLarge: Work['tooLarge'] }) {
  const { film: words } = useWords();
  const ways = useWays();
  const said = (large: Work['tooLarge'][number]): string => {
    switch (large.kind) {
      case 'film':
        return words.tooWideFilm(
          shortLength(large.width, ways),
          shortLength(large.takes, ways),
          large.machine && large.machine.of > 1 ? machineName(large.machine) : '',
        );
      case 'span':
        return words.tooLargeSpan(large.span, shortLength(large.length, ways), ways);
      case 'cap':
        return words.capOnFlat(large.order?.code ?? '', large.transfer.name);
      case 'transfer':
        return words.tooLargeTransfer(large.order?.code ?? '', large.transfer.name);
    }
  };
  return tooLarge.map((large) => (
    <p className="care small" key={said(large)}>
      {said(large)}
    </p>
  ));
}
