import { notify, openDialog } from '../store/view';
import { wordsNow } from '../words';

const MOST_BYTES = 8_000_000;

/** The text of a file in UTF-8 or, where that cannot be, as older spreadsheets write it; `null` if it is no text. */
export function decodeTable(bytes: Uint8Array<ArrayBuffer>): string | null {
  const [first, second] = bytes;
  const utf16 =
    first === 0xff && second === 0xfe ? 'utf-16le' : first === 0xfe && second === 0xff ? 'utf-16be' : null;
  if (utf16) return new TextDecoder(utf16).decode(bytes);
  if (bytes.includes(0)) return null;
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/** Opens a file in the window that reads tables. */
export async function openTable(file: File): Promise<void> {
  const bytes = file.size <= MOST_BYTES ? await file.arrayBuffer().catch(() => null) : null;
  const text = bytes && decodeTable(new Uint8Array(bytes));
  if (!text) notify('error', wordsNow().table.unreadableFile(file.name));
  else openDialog({ kind: 'paste', text });
}
