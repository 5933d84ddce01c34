import { type Bits, bitsOf, type Codes, codesOf, Damaged } from './jpeg-bits';
import { type JpegSegment, jpegParts } from './jpeg-parts';

interface Component {
  readonly id: number;
  readonly across: number;
  readonly down: number;
  /** Blocks of 8 by 8 that the image needs of it, and those of whole units. */
  readonly blocks: { readonly width: number; readonly height: number };
  readonly padded: { readonly width: number; readonly height: number };
  /** Which of each block's 64 figures are not 0: what a refining scan reads depends on it. */
  readonly known: Uint8Array | null;
  /** Of each of the 64 figures, how many of its bits no scan has told yet. */
  readonly missing: Uint8Array;
}

interface Frame {
  readonly progressive: boolean;
  readonly units: { readonly width: number; readonly height: number };
  readonly components: readonly Component[];
}

/** What of the figures of each block a scan tells, and to which bits (G.1.1.1). */
interface Part {
  readonly from: number;
  readonly to: number;
  readonly refines: boolean;
}

const isIn = (known: Uint8Array, at: number): boolean => (((known[at >> 3] as number) >> (at & 7)) & 1) === 1;
function put(known: Uint8Array, at: number): void {
  (known[at >> 3] as number) |= 1 << (at & 7);
}

/** Reads blocks of a scan one after the other; a run of blocks without figures goes on from one to the next. */
function blockReader({ from, to, refines }: Part, progressive: boolean) {
  let ended = 0;
  /** F.2.2: the first figure, then runs of zeros with a figure behind each. */
  const sequential = (bits: Bits, dc: Codes, ac: Codes): void => {
    bits.take(bits.code(dc));
    for (let at = 1; at < 64; at += 1) {
      const code = bits.code(ac);
      if (code === 0) return;
      at += code >> 4;
      bits.take(code & 15);
    }
  };
  /** G.1.2.2: figures met for the first time. */
  const begin = (bits: Bits, ac: Codes, known: Uint8Array, base: number): void => {
    if (ended > 0) {
      ended -= 1;
      return;
    }
    for (let at = from; at <= to; at += 1) {
      const code = bits.code(ac);
      const [run, size] = [code >> 4, code & 15];
      if (size === 0 && run < 15) {
        ended = (1 << run) - 1 + bits.take(run);
        return;
      }
      at += run;
      bits.take(size);
      if (size > 0 && at < 64) put(known, base + at);
    }
  };
  /** G.1.2.3: another bit of figures that are known, and new ones between them. */
  const refine = (bits: Bits, ac: Codes, known: Uint8Array, base: number): void => {
    let at = from;
    const another = (): void => void (isIn(known, base + at) && bits.bit());
    while (ended === 0 && at <= to) {
      const code = bits.code(ac);
      const size = code & 15;
      let run = code >> 4;
      if (size === 0 && run < 15) {
        ended = (1 << run) + bits.take(run);
        break;
      }
      if (size > 0) bits.bit();
      for (; at <= to; at += 1) {
        if (isIn(known, base + at)) bits.bit();
        else if (run === 0) break;
        else run -= 1;
      }
      if (size > 0 && at <= to) put(known, base + at);
      at += 1;
    }
    if (ended === 0) return;
    for (; at <= to; at += 1) another();
    ended -= 1;
  };
  return {
    /** An interval of restart begins. */
    restart: () => {
      ended = 0;
    },
    read(
      bits: Bits,
      dc: Codes | undefined,
      ac: Codes | undefined,
      known: Uint8Array | null,
      base: number,
    ): void {
      if (!progressive) {
        if (!dc || !ac) throw new Damaged();
        sequential(bits, dc, ac);
      } else if (from === 0) {
        if (refines) bits.bit();
        else if (dc) bits.take(bits.code(dc));
        else throw new Damaged();
      } else if (!ac || !known) throw new Damaged();
      else if (refines) refine(bits, ac, known, base);
      else begin(bits, ac, known, base);
    },
  };
}

function frameOf(data: Uint8Array, progressive: boolean): Frame {
  if (data.length < 6 || data.length < 6 + 3 * (data[5] as number)) throw new Damaged();
  const view = new DataView(data.buffer, data.byteOffset, data.byteLength);
  const [height, width] = [view.getUint16(1), view.getUint16(3)];
  const parts = Array.from({ length: data[5] as number }, (_, index) => ({
    id: data[6 + 3 * index] as number,
    across: (data[7 + 3 * index] as number) >> 4,
    down: (data[7 + 3 * index] as number) & 15,
  }));
  // Sampling is one to four on each axis (B.2.2).
  if (parts.some((part) => Math.min(part.across, part.down) < 1 || Math.max(part.across, part.down) > 4)) {
    throw new Damaged();
  }
  const [across, down] = [
    Math.max(...parts.map((part) => part.across)),
    Math.max(...parts.map((part) => part.down)),
  ];
  const units = { width: Math.ceil(width / (8 * across)), height: Math.ceil(height / (8 * down)) };
  const components = parts.map((part) => {
    const padded = { width: units.width * part.across, height: units.height * part.down };
    const blocks = {
      width: Math.ceil(Math.ceil((width * part.across) / across) / 8),
      height: Math.ceil(Math.ceil((height * part.down) / down) / 8),
    };
    const known = progressive ? new Uint8Array(8 * padded.width * padded.height) : null;
    return { ...part, padded, blocks, known, missing: new Uint8Array(64).fill(16) };
  });
  return { progressive, units, components };
}

/** Reads all blocks of a scan (annex B.2.3; the order of blocks by A.2). */
function readScan(
  frame: Frame,
  { data, intervals }: Extract<JpegSegment, { kind: 'scan' }>,
  tables: ReadonlyMap<number, Codes>,
  restartAfter: number,
): void {
  const count = data[0] as number;
  const chosen = Array.from({ length: count }, (_, index) => {
    const component = frame.components.find(({ id }) => id === data[1 + 2 * index]);
    const table = data[2 + 2 * index] as number;
    if (!component) throw new Damaged();
    return { component, dc: tables.get(table >> 4), ac: tables.get(16 + (table & 15)) };
  });
  const [from, to, bitsOfFigure] = [data[1 + 2 * count], data[2 + 2 * count], data[3 + 2 * count]].map(
    Number,
  ) as [number, number, number];
  for (const { component } of chosen) {
    if (frame.progressive) component.missing.fill(bitsOfFigure & 15, from, to + 1);
    else component.missing.fill(0);
  }
  const reader = blockReader({ from, to, refines: bitsOfFigure >> 4 !== 0 }, frame.progressive);
  const [only] = chosen;
  const isSingle = count === 1 && only !== undefined;
  const size = isSingle ? only.component.blocks : frame.units;
  const total = size.width * size.height;
  let interval = 0;
  let bits = bitsOf(intervals[0] ?? new Uint8Array());
  for (let unit = 0; unit < total; unit += 1) {
    if (restartAfter > 0 && unit > 0 && unit % restartAfter === 0) {
      interval += 1;
      const next = intervals[interval];
      if (!next) throw new Damaged();
      bits = bitsOf(next);
      reader.restart();
    }
    const [x, y] = [unit % size.width, Math.floor(unit / size.width)];
    for (const { component, dc, ac } of chosen) {
      const [wide, high] = isSingle ? [1, 1] : [component.across, component.down];
      for (let block = 0; block < wide * high; block += 1) {
        const column = x * wide + (block % wide);
        const row = y * high + Math.floor(block / wide);
        reader.read(bits, dc, ac, component.known, 64 * (row * component.padded.width + column));
      }
    }
  }
}

/**
 * Whether the data of each scan of a JPEG goes on to its last block: browsers fill up what is missing with grey, whatever the
 * markers say. Scans are read by their Huffman codes, figures left out (ISO/IEC 10918-1, annexes F.2 and G.2); arithmetic coding, which
 * browsers do not read, is not looked into.
 */
export function hasAllBlocks(bytes: Uint8Array): boolean {
  const tables = new Map<number, Codes>();
  let frame: Frame | null = null;
  let restartAfter = 0;
  try {
    for (const segment of jpegParts(bytes)) {
      const { data } = segment;
      switch (segment.kind) {
        case 'codes':
          for (let at = 0; at + 17 <= data.length; ) {
            const counts = data.subarray(at + 1, at + 17);
            const length = counts.reduce((sum, count) => sum + count, 0);
            tables.set(data[at] as number, codesOf(counts, data.subarray(at + 17, at + 17 + length)));
            at += 17 + length;
          }
          break;
        case 'restarts':
          restartAfter = ((data[0] as number) << 8) | (data[1] as number);
          break;
        case 'frame':
          if (segment.coding === 'other') return true;
          frame = frameOf(data, segment.coding === 'progressive');
          break;
        case 'scan':
          if (!frame) return false;
          readScan(frame, segment, tables, restartAfter);
          break;
      }
    }
  } catch (error) {
    if (error instanceof Damaged) return false;
    throw error;
  }
  return frame?.components.every(({ missing }) => missing.every((bits) => bits === 0)) ?? false;
}
