import { DemoButton } from '../panels/DemoButton';
import { Button } from '../parts/Button';
import { Empty } from '../parts/Empty';
import { goTo } from '../store/view';
import { useWords } from '../words';

/** The Film room of a shop that has nothing to lay out. */
export function NoOrders() {
  const { film: words } = useWords();
  return (
    <>
      <h1 className="visually-hidden">{words.title}</h1>
      <Empty title={words.emptyTitle} isPart>
        <p>{words.empty}</p>
        <div className="actions">
          <Button weight="primary" onPress={() => goTo('orders')}>
            {words.toOrders}
          </Button>
          <DemoButton />
        </div>
      </Empty>
    </>
  );
}
