export const FONT = '"Atkinson Hyperlegible Next", sans-serif';

/** Colours the canvas draws with: those of the page, read from its custom properties. */
export interface CanvasColours {
  readonly film: string;
  readonly filmEdge: string;
  readonly blank: string;
  readonly paper: string;
  readonly ink: string;
  readonly quiet: string;
  readonly accent: string;
  readonly error: string;
  readonly surface: string;
}

export function readColours(element: Element): CanvasColours {
  const style = getComputedStyle(element);
  const read = (name: string) => style.getPropertyValue(name).trim();
  return {
    film: read('--film'),
    filmEdge: read('--film-edge'),
    blank: read('--film-blank'),
    paper: read('--copy'),
    ink: read('--ink'),
    quiet: read('--quiet'),
    accent: read('--accent'),
    error: read('--error'),
    surface: read('--surface'),
  };
}
