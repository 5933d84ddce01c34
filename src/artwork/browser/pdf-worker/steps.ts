import { AnnotationMode, OPS, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Matrix, PageStep } from '../../pdf';

/** What the library tells of a font and of an image, as far as it is looked at. */
interface Font {
  readonly name: string;
  readonly missingFile?: boolean;
  readonly isType3Font?: boolean;
}
interface Picture {
  readonly width: number;
  readonly height: number;
}

const WHOLE: readonly Matrix[] = [[1, 0, 0, 1, 0, 0]];
const IMAGES = new Set([OPS.paintImageXObject, OPS.paintImageXObjectRepeat]);
/** Steps whose first argument is the name of what is told apart from them. */
const NAMES_ONE = new Set([...IMAGES, OPS.setFont]);
const isMatrix = (value: unknown): value is Matrix =>
  (Array.isArray(value) || ArrayBuffer.isView(value)) && (value as unknown as Matrix).length === 6;

export interface Drawn {
  readonly steps: readonly PageStep[];
  /** Whether an image could not be decoded. */
  readonly lacks: boolean;
}

/** The steps a page is drawn in, as far as they tell of fonts and images. */
export async function stepsOf(page: PDFPageProxy): Promise<Drawn> {
  const { fnArray, argsArray } = await page.getOperatorList({ annotationMode: AnnotationMode.DISABLE });
  /** What the library tells of a font or an image, once it is there; `null` of an image that cannot be decoded. */
  const told = async (id: unknown): Promise<unknown> => {
    const name = String(id);
    const held = name.startsWith('g_') ? page.commonObjs : page.objs;
    return held.has(name) ? held.get(name) : new Promise((resolve) => void held.get(name, resolve));
  };
  const asked = new Set(
    fnArray.flatMap((operator, at) => (NAMES_ONE.has(operator) ? [String(argsArray[at]?.[0])] : [])),
  );
  const found = new Map(await Promise.all([...asked].map(async (id) => [id, await told(id)] as const)));
  let lacks = false;
  const steps = fnArray.flatMap((operator, at): PageStep[] => {
    const args = (argsArray[at] ?? []) as readonly unknown[];
    if (IMAGES.has(operator) && !found.get(String(args[0]))) lacks = true;
    switch (operator) {
      case OPS.save:
        return [{ kind: 'save' }];
      case OPS.restore:
      case OPS.paintFormXObjectEnd:
        return [{ kind: 'restore' }];
      case OPS.transform:
        return isMatrix(args) ? [{ kind: 'transform', matrix: args }] : [];
      case OPS.paintFormXObjectBegin:
        return isMatrix(args[0])
          ? [{ kind: 'save' }, { kind: 'transform', matrix: args[0] }]
          : [{ kind: 'save' }];
      case OPS.paintImageXObject: {
        const [, width, height] = args as [string, number, number];
        return [{ kind: 'image', width, height, within: WHOLE }];
      }
      case OPS.paintImageXObjectRepeat: {
        const [id, across, down] = args as [string, number, number];
        const picture = found.get(id) as Picture | null | undefined;
        return picture ? [{ kind: 'image', ...sizeOf(picture), within: [[across, 0, 0, down, 0, 0]] }] : [];
      }
      case OPS.paintInlineImageXObject:
      case OPS.paintImageMaskXObject:
        return [{ kind: 'image', ...sizeOf(args[0] as Picture), within: WHOLE }];
      case OPS.setFont: {
        const font = found.get(String(args[0])) as Font | null | undefined;
        const isMissing = font?.missingFile === true && font.isType3Font !== true;
        return [{ kind: 'font', missing: isMissing ? font.name : null }];
      }
      case OPS.setTextRenderingMode:
        return [{ kind: 'text-mode', mode: Number(args[0]) }];
      case OPS.showText:
        return [{ kind: 'text' }];
      default:
        return [];
    }
  });
  return { steps, lacks };
}

const sizeOf = ({ width, height }: Picture): Picture => ({ width, height });
