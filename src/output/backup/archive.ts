import { Inflate } from 'fflate';
import { crc32 } from '../../artwork/crc';

/** A file whose bytes are read piece by piece, so that an archive need not be in memory. */
export interface Source {
  readonly size: number;
  /** Reads from one offset up to another. */
  read(from: number, to: number): Promise<Uint8Array<ArrayBuffer>>;
}

/** One file of an archive, as its directory tells of it before anything is unpacked. */
export interface Part {
  readonly name: string;
  readonly isStored: boolean;
  /** In bytes, packed and unpacked. */
  readonly packed: number;
  readonly size: number;
  readonly crc: number;
  readonly header: number;
}

/** Lengths of the fixed parts of records, and their signatures (PKWARE APPNOTE 6.3, 4.3.7, 4.3.12 and 4.3.16). */
const LOCAL = { length: 30, signature: 0x04034b50 };
const ENTRY = { length: 46, signature: 0x02014b50 };
const END = { length: 22, signature: 0x06054b50 };
const LONGEST_COMMENT = 0xffff;
/** A directory of 20,000 images is 3 MB. */
const LONGEST_DIRECTORY = 16 << 20;
/** In steps this small nothing unpacks to more than 17 MB at a time, since DEFLATE gives 1032 bytes for one at most (RFC 1951). */
const STEP = 1 << 14;

const viewOf = ({ buffer, byteOffset, byteLength }: Uint8Array): DataView =>
  new DataView(buffer, byteOffset, byteLength);

/** The files of a zip archive by its directory, which lies at its end; `null` if there is none, or none that is whole. */
export async function partsOf(source: Source): Promise<Part[] | null> {
  const tailFrom = Math.max(0, source.size - END.length - LONGEST_COMMENT);
  const tail = viewOf(await source.read(tailFrom, source.size));
  let end = tail.byteLength - END.length;
  while (end >= 0 && tail.getUint32(end, true) !== END.signature) end -= 1;
  if (end < 0) return null;
  const [count, length, from] = [
    tail.getUint16(end + 10, true),
    tail.getUint32(end + 12, true),
    tail.getUint32(end + 16, true),
  ];
  if (length > LONGEST_DIRECTORY || from + length > source.size) return null;
  const bytes = await source.read(from, from + length);
  const directory = viewOf(bytes);
  const parts: Part[] = [];
  for (let at = 0; parts.length < count; ) {
    if (at + ENTRY.length > length || directory.getUint32(at, true) !== ENTRY.signature) return null;
    const method = directory.getUint16(at + 10, true);
    const nameLength = directory.getUint16(at + 28, true);
    const name = bytes.subarray(at + ENTRY.length, at + ENTRY.length + nameLength);
    if (method !== 0 && method !== 8) return null;
    parts.push({
      name: String.fromCharCode(...name),
      isStored: method === 0,
      crc: directory.getUint32(at + 16, true),
      packed: directory.getUint32(at + 20, true),
      size: directory.getUint32(at + 24, true),
      header: directory.getUint32(at + 42, true),
    });
    at += ENTRY.length + nameLength + directory.getUint16(at + 30, true) + directory.getUint16(at + 32, true);
  }
  return parts;
}

/** Where the packed bytes of a part lie in the archive; `null` if they do not. */
export async function rangeOf(source: Source, { header, packed }: Part): Promise<[number, number] | null> {
  if (header + LOCAL.length > source.size) return null;
  const local = viewOf(await source.read(header, header + LOCAL.length));
  if (local.getUint32(0, true) !== LOCAL.signature) return null;
  const from = header + LOCAL.length + local.getUint16(26, true) + local.getUint16(28, true);
  return from + packed <= source.size ? [from, from + packed] : null;
}

/** Unpacks as much as the directory says, never more; `null` if there is less or more of it. */
async function inflated(
  source: Source,
  [from, to]: [number, number],
  size: number,
): Promise<Uint8Array<ArrayBuffer> | null> {
  const bytes = new Uint8Array(size);
  let filled = 0;
  const inflate = new Inflate((chunk) => {
    if (filled + chunk.length <= size) bytes.set(chunk, filled);
    filled += chunk.length;
  });
  for (let at = from; at < to && filled <= size; at += STEP) {
    const next = Math.min(to, at + STEP);
    inflate.push(await source.read(at, next), next === to);
  }
  return filled === size ? bytes : null;
}

/** The bytes of a part, checked against their CRC-32; `null` if they are not what was packed. */
export async function bytesOf(source: Source, part: Part): Promise<Uint8Array<ArrayBuffer> | null> {
  const range = await rangeOf(source, part);
  if (!range || (part.isStored && part.packed !== part.size)) return null;
  try {
    const bytes = part.isStored ? await source.read(...range) : await inflated(source, range, part.size);
    return bytes && bytes.length === part.size && crc32(bytes) === part.crc ? bytes : null;
  } catch {
    return null;
  }
}
