import { useSyncExternalStore } from 'react';

/** As wide as a phone, or a small tablet held upright; a large screen at twice its size is so too. */
const query = () => matchMedia('(max-width: 860px)');

function follow(changed: () => void): () => void {
  const narrow = query();
  narrow.addEventListener('change', changed);
  return () => narrow.removeEventListener('change', changed);
}

/** Whether the screen is so narrow that what is worked on has to stand before what is set up. */
export const useNarrow = (): boolean => useSyncExternalStore(follow, () => query().matches);
