import { Button } from '../parts/Button';
import { type Dialog, openDialog } from '../store/view';
import { useWords } from '../words';

/** The end of a window's form: leave all as it was, or take over what is typed. */
export function FormActions({
  save,
  back = null,
  isDisabled = false,
}: {
  /** What taking over is called. */
  save: string;
  /** The window that cancelling goes back to. */
  back?: Dialog | null;
  isDisabled?: boolean;
}) {
  const { common } = useWords();
  return (
    <div className="actions">
      <Button onPress={() => openDialog(back)}>{common.cancel}</Button>
      <Button writes type="submit" weight="primary" isDisabled={isDisabled}>
        {save}
      </Button>
    </div>
  );
}
