import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
// It would be loaded by the first reading.
import 'pdfjs-dist/legacy/build/pdf.worker.mjs';

type Matrix = readonly [number, number, number, number, number, number];

const MM_PER_POINT = 25.4 / 72;

/** A stroked path's box, an image's and a text, in millimetres from the page's top left corner. */
export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly paths: readonly {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  }[];
  /** Paths of two points: straight lines. */
  readonly lines: readonly {
    readonly x1: number;
    readonly y1: number;
    readonly x2: number;
    readonly y2: number;
  }[];
  readonly images: readonly {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
    readonly pixels: { readonly width: number; readonly height: number };
  }[];
  readonly texts: readonly {
    readonly text: string;
    readonly x: number;
    readonly y: number;
    /** Of the text's own axes on the page: positive, unless it is mirrored. */
    readonly handedness: number;
    /** What its letters cover, from the line they stand on up to the height of capitals. */
    readonly box: {
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
    };
  }[];
}

const times = (a: Matrix, b: Matrix): Matrix => [
  a[0] * b[0] + a[2] * b[1],
  a[1] * b[0] + a[3] * b[1],
  a[0] * b[2] + a[2] * b[3],
  a[1] * b[2] + a[3] * b[3],
  a[0] * b[4] + a[2] * b[5] + a[4],
  a[1] * b[4] + a[3] * b[5] + a[5],
];

const at = (m: Matrix, x: number, y: number) =>
  [m[0] * x + m[2] * y + m[4], m[1] * x + m[3] * y + m[5]] as const;

/** Height of capitals as a share of the em, by the font's OS/2 table: 668 in 1000. */
const CAP = 0.668;

/** The two points of a path that is a straight line; `null` of any other. */
function endsOf(data: unknown): readonly [number, number, number, number] | null {
  const [path] = Array.isArray(data) ? data : [];
  if (!(path instanceof Float32Array)) return null;
  // In pdf.js a path is its operators among their figures: 0 moves, 1 draws a line, 4 closes.
  const [move, x1, y1, draw, x2, y2, next] = path;
  if (move !== 0 || draw !== 1 || (next !== undefined && next !== 4)) return null;
  return [x1 ?? 0, y1 ?? 0, x2 ?? 0, y2 ?? 0];
}

/** Reads a PDF with a library that shares nothing with the one that wrote it. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPage[]> {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const [, , right = 0, top = 0] = page.view;
    const { fnArray, argsArray } = await page.getOperatorList();
    const stack: Matrix[] = [];
    let matrix: Matrix = [1, 0, 0, 1, 0, 0];
    const paths: ReadPage['paths'][number][] = [];
    const lines: ReadPage['lines'][number][] = [];
    const images: ReadPage['images'][number][] = [];
    const boxOf = (x1: number, y1: number, x2: number, y2: number) => {
      const [ax, ay] = at(matrix, x1, y1);
      const [bx, by] = at(matrix, x2, y2);
      return {
        x: Math.min(ax, bx) * MM_PER_POINT,
        y: (top - Math.max(ay, by)) * MM_PER_POINT,
        width: Math.abs(ax - bx) * MM_PER_POINT,
        height: Math.abs(ay - by) * MM_PER_POINT,
      };
    };
    fnArray.forEach((operator, index) => {
      const args = argsArray[index];
      if (operator === OPS.save) stack.push(matrix);
      else if (operator === OPS.restore) matrix = stack.pop() ?? matrix;
      else if (operator === OPS.transform) matrix = times(matrix, args as unknown as Matrix);
      else if (operator === OPS.constructPath) {
        const [x1, y1, x2, y2] = Array.from(args[2] as ArrayLike<number>) as [number, number, number, number];
        paths.push(boxOf(x1, y1, x2, y2));
        const ends = endsOf(args[1]);
        if (ends) {
          const [ax, ay] = at(matrix, ends[0], ends[1]);
          const [bx, by] = at(matrix, ends[2], ends[3]);
          lines.push({
            x1: ax * MM_PER_POINT,
            y1: (top - ay) * MM_PER_POINT,
            x2: bx * MM_PER_POINT,
            y2: (top - by) * MM_PER_POINT,
          });
        }
      } else if (operator === OPS.paintImageXObject) {
        const [, width, height] = args as unknown as [string, number, number];
        images.push({ ...boxOf(0, 0, 1, 1), pixels: { width, height } });
      }
    });
    const { items } = await page.getTextContent();
    const texts = items.flatMap((item) => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [a, b, c, d, e, f] = item.transform as unknown as Matrix;
      const [x, y] = [e * MM_PER_POINT, (top - f) * MM_PER_POINT];
      const along = item.width * MM_PER_POINT;
      const tall = Math.hypot(a, b) * MM_PER_POINT * CAP;
      const box =
        Math.abs(b) > Math.abs(a)
          ? { x: x - tall, y: y - along, width: tall, height: along }
          : { x, y: y - tall, width: along, height: tall };
      return [{ text: item.str, x, y, handedness: a * d - b * c, box }];
    });
    pages.push({ width: right * MM_PER_POINT, height: top * MM_PER_POINT, paths, lines, images, texts });
  }
  return pages;
}
