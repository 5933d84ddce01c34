import { useState } from 'react';
import { edits } from '../../src/editing';
import { commonFabric, type FabricLine, runViewOf, untoldLines } from '../../src/model';
import { FABRICS, type Fabric } from '../../src/units';
import { FabricChoice } from '../panels/FabricChoice';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { CloseButton } from '../windows/CloseButton';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { lockRun } from './lock';

const CHOOSE = 'choose';

/** What a line is called: its garments, or its transfer. */
const nameOf = (line: FabricLine): string =>
  'style' in line ? [line.style, line.colour, line.size].filter(Boolean).join(', ') : line.name;

/** Asks for the fabric of each line that tells none, or of all at once, before their run is locked. */
export function FabricsDialog({ id }: { id: string }) {
  const { untold: words, press, runs } = useAllWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const view = runViewOf(book, id);
  const untold = view ? untoldLines(view) : [];
  // Those that are told stay in view.
  const [asked] = useState(() => untold.map((line) => line.id));
  const lines = asked.flatMap((line) => book.garment[line] ?? book.transfer[line] ?? []);
  const all = commonFabric(lines);
  const lock = () => {
    openDialog(null);
    lockRun();
  };
  return (
    <Window title={words.title}>
      <p>{words.hint(lines.length, ways)}</p>
      <Choice<Fabric | typeof CHOOSE>
        writes
        label={words.all}
        value={all ?? CHOOSE}
        options={[
          ...(all === null ? [{ value: CHOOSE as typeof CHOOSE, label: words.choose }] : []),
          ...FABRICS.map((value) => ({ value, label: press.fabrics[value] })),
        ]}
        onChange={(fabric) => fabric !== CHOOSE && act(edits.tellFabric(asked, fabric))}
      />
      {lines.length > 1 && (
        <div className="fields">
          {lines.map((line) => (
            <FabricChoice
              key={line.id}
              label={`${view?.order[line.order]?.code ?? ''} ${nameOf(line)}`}
              fabric={line.fabric}
              onTell={(fabric) => act(edits.tellFabric([line.id], fabric))}
            />
          ))}
        </div>
      )}
      <p className="quiet small">{words.other}</p>
      <div className="actions">
        <CloseButton />
        <Button writes weight="primary" isDisabled={untold.length > 0} onPress={lock}>
          {runs.lock}
        </Button>
      </div>
    </Window>
  );
}
