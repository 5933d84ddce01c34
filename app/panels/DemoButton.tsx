import { Button } from '../parts/Button';
import { openSource } from '../store/boot';
import { useShop } from '../store/shop';
import { useWords } from '../words';

/** Back to the demo day, for a shop that has nothing of its own to look at yet. */
export function DemoButton() {
  const { bands } = useWords();
  const source = useShop((shop) => shop.source);
  if (source === 'demo') return null;
  return (
    <Button weight="plain" onPress={() => void openSource('demo')}>
      {bands.backToDemo}
    </Button>
  );
}
