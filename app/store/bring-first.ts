import { edits } from '../../src/editing';
import { type Order, settingsOf } from '../../src/model';
import { wordsNow } from '../words';
import { atOnceOrSaid } from './at-once';
import { reveal } from './camera';
import { nextRunName } from './next-run';
import { stopPlanning } from './planning';
import { laidNow, openRunNow, waysNow } from './selectors';
import { act } from './shop';
import { goTo, notify, openRun } from './view';

/**
 * Makes a rush of an order and brings it to the front of the run that is looked at, or of a run of its own where that one is sent to
 * print; shows it, and says what came of it.
 */
export async function bringFirst(order: Order): Promise<void> {
  const engine = await atOnceOrSaid();
  if (!engine) return;
  const open = openRunNow();
  if (!open) return;
  stopPlanning();
  const { run } = open;
  const done = act(
    edits.bringFirst(
      order.id,
      run.state === 'draft'
        ? { kind: 'run', run: run.id }
        : { kind: 'new', name: nextRunName(), inUse: run.film },
      engine,
    ),
  );
  if (!done?.result) return;
  const { placed, waiting } = done.result;
  const { film: words } = wordsNow();
  const ways = waysNow();
  openRun(done.result.run);
  goTo('film');
  const first = laidNow()?.copies.find((copy) => copy.order.id === order.id);
  if (first) reveal(first.y, first.y + first.length);
  notify('plain', words.broughtFirst(order.name, placed, ways));
  if (waiting > 0) notify('care', words.noRoomForRush(order.name, waiting, ways));
  const surcharge = settingsOf(done.book)?.pricing.rush ?? 0;
  if (!order.rush && surcharge > 0) notify('plain', words.rushPriced(order.name));
}
