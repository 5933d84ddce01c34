import { Button } from '../parts/Button';
import { useWords } from '../words';
import type { Command } from './command';
import { useCommandState } from './useCommandState';

/** A button for a command: its label, whether it can be pressed, and what it does come from there. */
export function CommandButton({
  command,
  weight,
  label,
  sign,
}: {
  command: Command;
  weight?: 'primary' | 'normal' | 'plain';
  /** Another label of the catalogue, where the command does one of two things. */
  label?: Command['label'];
  /** A sign that every language shares. */
  sign?: string;
}) {
  const { commands } = useWords();
  const available = useCommandState(command);
  return (
    <Button weight={weight ?? 'normal'} isDisabled={!available} onPress={() => command.run()}>
      {sign ?? commands[label ?? command.label]}
    </Button>
  );
}
