import type { Command } from '../commands/command';
import { useCommandState } from '../commands/useCommandState';
import { Button } from './Button';

/** A button for a command: its label, whether it can be pressed, and what it does come from there. */
export function CommandButton({
  command,
  weight,
  label,
}: {
  command: Command;
  weight?: 'primary' | 'normal' | 'plain';
  label?: string;
}) {
  const available = useCommandState(command);
  return (
    <Button weight={weight ?? 'normal'} isDisabled={!available} onPress={() => command.run()}>
      {label ?? command.label}
    </Button>
  );
}
