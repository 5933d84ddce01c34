import type { LaidRun } from '../../src/layout';
import { Button } from '../parts/Button';
import { declineOffer, takeOffer, useOffers } from '../store/offers';
import { useWays } from '../store/selectors';
import { useWords } from '../words';
import { filmLength, money } from '../words/format';

/** A better layout, found while the film was left alone: what it saves, and whether to take it. */
export function Offer({ run }: { run: LaidRun }) {
  const { film: words } = useWords();
  const ways = useWays();
  const offer = useOffers((state) => state.offer);
  if (offer?.run.id !== run.id) return null;
  const { sheets, length, cost } = offer.saves;
  const less = sheets > 0 ? words.sheets(sheets, ways) : filmLength(length, ways);
  return (
    <div className="offer" role="status">
      <p>{words.offer(less, money(cost, ways))}</p>
      <Button weight="plain" onPress={declineOffer}>
        {words.declineOffer}
      </Button>
      <Button writes onPress={takeOffer}>
        {words.takeOffer}
      </Button>
    </div>
  );
}
