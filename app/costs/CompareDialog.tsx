import { edits } from '../../src/editing';
import { orderAlone } from '../../src/layout';
import { filmOf } from '../../src/model';
import { Button } from '../parts/Button';
import { stopPlanning } from '../store/planning';
import { useOpenRun } from '../store/selectors';
import { act, useShop } from '../store/shop';
import type { Found } from '../store/trials';
import { notify, openDialog } from '../store/view';
import { CloseButton } from '../windows/CloseButton';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { Comparison } from './Comparison';
import type { Way } from './ways';

/** A run on other film, or on its film otherwise, side by side; one of them can be taken. */
export function CompareDialog({ id }: { id: string }) {
  const { compare: words, costSheet } = useAllWords();
  const book = useShop((shop) => shop.book);
  const run = book.run[id];
  const film = run && filmOf(book, run);
  if (!run || !film) return null;
  const take = (way: Way, found: Found) => {
    stopPlanning();
    const { tried, places } = found;
    const taken = act(edits.takeWay(run.id, { takes: way.takes, film: tried.film, places }));
    if (taken?.changed) notify('plain', words.applied(way.label));
    openDialog(null);
  };
  const isDraft = run.state === 'draft' && run.printed === null;
  return (
    <Window title={words.title(run.name)} wide>
      <Comparison
        film={film}
        bench={(now) => ({ book: now, run })}
        hasOrders
        cost={words.cost}
        remark={isDraft ? null : words.locked}
        onTake={isDraft ? take : null}
      />
      <div className="actions">
        <Button weight="plain" onPress={() => openDialog({ kind: 'cost-sheet', run: id })}>
          {costSheet.title(run.name)}
        </Button>
        <CloseButton />
      </div>
    </Window>
  );
}

/** An order alone on the open run's film, on other film, and otherwise, side by side. */
export function CompareOrderDialog({ id }: { id: string }) {
  const { compare: words, price } = useAllWords();
  const order = useShop(({ book }) => book.order[id]);
  const film = useOpenRun()?.film;
  if (!order || !film) return null;
  return (
    <Window title={words.title(order.name)} wide>
      <Comparison
        film={film}
        bench={(now) => orderAlone(now, order, film)}
        hasOrders={false}
        cost={words.costAlone}
        remark={words.alone}
        onTake={null}
      />
      <div className="actions">
        <Button weight="plain" onPress={() => openDialog({ kind: 'price', order: id })}>
          {price.title(order.name)}
        </Button>
        <CloseButton />
      </div>
    </Window>
  );
}
