import { useEffect } from 'react';
import { create } from 'zustand';
import { fetchPart } from '../offline/part';
import { atRest } from './at-rest';

type DayPlanner = typeof import('./day-planner');

type Fetched =
  | { readonly kind: 'on-its-way' }
  | { readonly kind: 'missing' }
  | { readonly kind: 'here'; readonly planner: DayPlanner };

const useFetched = create<Fetched>(() => ({ kind: 'on-its-way' }));

let asked = false;

/** Asks for what plans the day, which is asked for once unless it could not be fetched. */
export function fetchDayPlanner(): void {
  if (asked) return;
  asked = true;
  useFetched.setState({ kind: 'on-its-way' }, true);
  void atRest()
    .then(() => fetchPart(() => import('./day-planner')))
    .then(
      (planner) => useFetched.setState({ kind: 'here', planner }, true),
      () => {
        asked = false;
        useFetched.setState({ kind: 'missing' }, true);
      },
    );
}

/** What plans the day, once it is there. */
export function useDayPlanner(): Fetched {
  useEffect(fetchDayPlanner, []);
  return useFetched();
}
