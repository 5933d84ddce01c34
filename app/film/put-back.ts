import { edits } from '../../src/editing';
import { placeFor } from '../../src/layout';
import { copiesByTransfer } from '../../src/model';
import { atOnceOrSaid } from '../store/at-once';
import { reveal } from '../store/camera';
import { usePlanning } from '../store/planning';
import { laidNow, openRunNow } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { notify, select } from '../store/view';
import { wordsNow } from '../words';

/** Puts the first waiting copy of a transfer where there is room for it, and selects it; says so if there is none. */
export async function putBack(transfer: string): Promise<void> {
  const engine = await atOnceOrSaid();
  if (!engine) return;
  const { book } = useShop.getState();
  const open = openRunNow();
  const copy = copiesByTransfer(book)
    .get(transfer)
    ?.find((candidate) => candidate.place === null && (candidate.run ?? open?.run.id) === open?.run.id);
  if (!open) return;
  if (!copy) {
    notify('care', wordsNow().film.chosenElsewhere(book.transfer[transfer]?.name ?? ''));
    return;
  }
  const place = placeFor(book, open.run, open.film, copy, engine);
  if (!place) {
    notify('care', wordsNow().film.noRoom);
    return;
  }
  act(edits.setPlaces(open.run.id, [[copy.id, place]]));
  usePlanning.setState({ leftOut: [] });
  select(copy.id);
  const laid = laidNow()?.copies.find(({ id }) => id === copy.id);
  if (laid) reveal(laid.y, laid.y + laid.length);
}
