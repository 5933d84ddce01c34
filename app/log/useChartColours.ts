import { useSyncExternalStore } from 'react';

/** Colours a canvas is drawn with, as the page's styles have them. */
export interface ChartColours {
  readonly ink: string;
  readonly quiet: string;
  readonly line: string;
  readonly accent: string;
  readonly care: string;
  readonly accentSoft: string;
}

const queries = ['(prefers-color-scheme: dark)', '(forced-colors: active)', '(prefers-contrast: more)'];

/** Forced colours do not reach a canvas: it asks for the system's by name. */
const forced: ChartColours = {
  ink: 'CanvasText',
  quiet: 'CanvasText',
  line: 'GrayText',
  accent: 'CanvasText',
  care: 'LinkText',
  accentSoft: 'GrayText',
};

const subscribe = (onChange: () => void) => {
  const lists = queries.map((query) => matchMedia(query));
  for (const list of lists) list.addEventListener('change', onChange);
  return () => {
    for (const list of lists) list.removeEventListener('change', onChange);
  };
};

const scheme = () => queries.map((query) => matchMedia(query).matches).join();

let known: { scheme: string; colours: ChartColours } | null = null;

function read(): ChartColours {
  const now = scheme();
  if (known?.scheme === now) return known.colours;
  const style = getComputedStyle(document.documentElement);
  const of = (name: string) => style.getPropertyValue(name).trim();
  const colours = matchMedia('(forced-colors: active)').matches
    ? forced
    : {
        ink: of('--ink'),
        quiet: of('--quiet'),
        line: of('--line'),
        accent: of('--accent'),
        care: of('--care'),
        accentSoft: of('--accent-soft'),
      };
  known = { scheme: now, colours };
  return colours;
}

/** The colours in force; they change with the system's scheme. */
export const useChartColours = (): ChartColours => useSyncExternalStore(subscribe, read);
