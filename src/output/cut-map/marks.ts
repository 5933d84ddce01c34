import type { LaidCopy } from '../../layout';

/** How dark a mark is on white paper: nothing on the map needs colour. */
export type Tone = 'ink' | 'quiet' | 'faint';

export type Weight = 400 | 700;

export interface LineMark {
  readonly kind: 'line';
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly thick: number;
  readonly dash: readonly [on: number, off: number] | null;
  readonly tone: Tone;
}

/** An outline, its line centred on the edge. */
export interface BoxMark {
  readonly kind: 'box';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly thick: number;
  readonly tone: Tone;
  /** The copy that it is the outline of. */
  readonly copy: LaidCopy['id'] | null;
}

/** A closed line through points, its line centred on the edge. */
export interface RingMark {
  readonly kind: 'ring';
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly thick: number;
  readonly tone: Tone;
  /** The copy that it is an outline of. */
  readonly copy: LaidCopy['id'] | null;
}

export interface TextMark {
  readonly kind: 'text';
  /** On the baseline, where the text starts, has its middle or ends. */
  readonly x: number;
  readonly y: number;
  readonly text: string;
  /** Of the em. */
  readonly size: number;
  readonly weight: Weight;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Turned by a quarter about (x, y), so that it reads upwards. Never mirrored. */
  readonly upright: boolean;
  readonly tone: Tone;
}

/** An artwork's picture, as it stands upright. */
interface PictureMark {
  readonly kind: 'picture';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly artwork: NonNullable<LaidCopy['transfer']['artwork']>;
}

/** What is drawn on a page: millimetres from its top left corner, y downwards. */
export type Mark = LineMark | BoxMark | RingMark | TextMark | PictureMark;

/** A sheet of the printed map. */
export interface Page {
  readonly number: number;
  readonly of: number;
  /** Millimetres. */
  readonly width: number;
  readonly height: number;
  /** Millimetres of film to a millimetre of paper; `null` where no film is drawn. */
  readonly scale: number | null;
  readonly marks: readonly Mark[];
}

/** A rectangle on the page. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** 1 pt = 1/72 in, in millimetres. */
export const PT = 25.4 / 72;

export const line = (
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  { thick = 0.25, dash = null, tone = 'ink' }: Partial<Pick<LineMark, 'thick' | 'dash' | 'tone'>> = {},
): LineMark => ({ kind: 'line', x1, y1, x2, y2, thick, dash, tone });

export const box = (
  { x, y, width, height }: Box,
  { thick = 0.25, tone = 'ink', copy = null }: Partial<Pick<BoxMark, 'thick' | 'tone' | 'copy'>> = {},
): BoxMark => ({ kind: 'box', x, y, width, height, thick, tone, copy });

export const ring = (
  points: RingMark['points'],
  { thick = 0.25, tone = 'ink', copy = null }: Partial<Pick<RingMark, 'thick' | 'tone' | 'copy'>> = {},
): RingMark => ({ kind: 'ring', points, thick, tone, copy });

type TextStyle = Pick<TextMark, 'size'> & Partial<Pick<TextMark, 'weight' | 'anchor' | 'upright' | 'tone'>>;

export const text = (
  x: number,
  y: number,
  content: string,
  { size, weight = 400, anchor = 'start', upright = false, tone = 'ink' }: TextStyle,
): TextMark => ({ kind: 'text', x, y, text: content, size, weight, anchor, upright, tone });

/** The same marks on a sheet so many times as large. */
export function enlarged(mark: Mark, zoom: number): Mark {
  switch (mark.kind) {
    case 'line': {
      const { x1, y1, x2, y2, thick, dash } = mark;
      const wider = dash && ([dash[0] * zoom, dash[1] * zoom] as const);
      return {
        ...mark,
        x1: x1 * zoom,
        y1: y1 * zoom,
        x2: x2 * zoom,
        y2: y2 * zoom,
        thick: thick * zoom,
        dash: wider,
      };
    }
    case 'text':
      return { ...mark, x: mark.x * zoom, y: mark.y * zoom, size: mark.size * zoom };
    case 'ring':
      return {
        ...mark,
        points: mark.points.map(([x, y]) => [x * zoom, y * zoom] as const),
        thick: mark.thick * zoom,
      };
    case 'box':
    case 'picture': {
      const { x, y, width, height } = mark;
      const larger = { x: x * zoom, y: y * zoom, width: width * zoom, height: height * zoom };
      return mark.kind === 'box' ? { ...mark, ...larger, thick: mark.thick * zoom } : { ...mark, ...larger };
    }
  }
}
