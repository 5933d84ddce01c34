import { usePlanning } from '../store/planning';
import { useShop } from '../store/shop';
import { useView } from '../store/view';
import type { Command } from './command';

/** Whether a command can be given now; heard again whenever the book, the planning or the view changes. */
export function useCommandState(command: Command): boolean {
  const inShop = useShop(() => command.available());
  const inPlanning = usePlanning(() => command.available());
  const inView = useView(() => command.available());
  return inShop && inPlanning && inView;
}
