import { edits } from '../../src/editing';
import type { Transfer } from '../../src/model';
import { Button } from '../parts/Button';
import { useHeld } from '../parts/held';
import { act } from '../store/shop';
import { useAllWords } from '../words';
import './shade-choice.css';

const SHADES = ['#ffffff', '#1c1c1e', '#1f2b46', '#7a1f2b', '#6b7a3a', '#9aa3a8', '#f3d08a'] as const;

/** The garment's colour that a transfer's artwork is looked at on. */
export function ShadeChoice({ transfer }: { transfer: Transfer }) {
  const { orders: words } = useAllWords();
  const { isHeld, reason } = useHeld(true);
  const choose = (shade: string | null) => act(edits.editTransfer(transfer.id, { shade }));
  return (
    <fieldset className="shades" disabled={isHeld} {...reason}>
      <legend>{words.shade}</legend>
      <Button writes weight={transfer.shade === null ? 'primary' : 'normal'} onPress={() => choose(null)}>
        {words.noShade}
      </Button>
      {SHADES.map((shade) => (
        <button
          key={shade}
          type="button"
          className="shade"
          aria-label={words.shadeNamed(shade)}
          aria-pressed={transfer.shade === shade}
          style={{ backgroundColor: shade }}
          onClick={() => choose(shade)}
        />
      ))}
      <label className="tick">
        {words.otherShade}
        <input
          type="color"
          value={transfer.shade ?? '#ffffff'}
          onChange={(event) => choose(event.target.value)}
        />
      </label>
    </fieldset>
  );
}
