import { type Ways, whole } from '../format';

export const orders = {
  rush: 'rush',
  noDue: 'no date',
  dueOn: (day: string) => `due ${day}`,
  takenOff: (count: number, ways: Pick<Ways, 'locale'>) =>
    count === 1
      ? 'One copy no longer fits where it lay and came off the film. Lay out again, or undo.'
      : `${whole(count, ways)} copies no longer fit where they lay and came off the film. Lay out again, or undo.`,
};
