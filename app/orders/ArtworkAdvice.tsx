import { heightOf, physicalSize } from '../../src/artwork';
import { edits } from '../../src/editing';
import type { Transfer } from '../../src/model';
import { Button } from '../parts/Button';
import { useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { useAllWords } from '../words';
import { area, typedLength } from '../words/format';
import { differs } from './proportions';

/** What the artwork's file says of its size, where that is not what the transfer is printed at. */
export function ArtworkAdvice({ transfer }: { transfer: Transfer }) {
  const { orders: words } = useAllWords();
  const ways = useWays();
  const artwork = useShop(({ book }) => (transfer.artwork ? book.artwork[transfer.artwork] : undefined));
  if (!artwork?.trim) return null;
  const { trim, density } = artwork;
  const file = density && physicalSize(trim, density);
  const height = heightOf(trim, transfer.width, density);
  const stretched = differs(height, transfer.height);
  const otherSize = file && (differs(file.width, transfer.width) || differs(file.height, transfer.height));
  if (!stretched && !otherSize) return null;
  const resize = (size: { width: Transfer['width']; height: Transfer['height'] }) => {
    const typed = (length: Transfer['width']) => `${typedLength(length, ways)} ${ways.unit}`;
    act(
      edits.editTransfer(transfer.id, {
        ...size,
        typed: { width: typed(size.width), height: typed(size.height) },
      }),
    );
  };
  return (
    <div className="row-note small">
      {stretched && (
        <p className="care">
          {words.otherProportions}{' '}
          <Button writes weight="plain" onPress={() => resize({ width: transfer.width, height })}>
            {words.keepProportions}
          </Button>
        </p>
      )}
      {otherSize && (
        <p className="quiet">
          {words.fileSays(area(file.width, file.height, ways))}{' '}
          <Button writes weight="plain" onPress={() => resize(file)}>
            {words.useFileSize}
          </Button>
        </p>
      )}
    </div>
  );
}
