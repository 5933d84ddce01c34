import { MOST_SIGNS } from '../../src/intake/limits';
import { waysNow } from '../store/selectors';
import { notify, openDialog } from '../store/view';
import { allWordsNow } from '../words';

/** A sign takes two bytes at most in what spreadsheets write, and a mark goes before them. */
const MOST_BYTES = 2 * MOST_SIGNS + 2;

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

/** Opens a text in the window that reads tables; says so, if it is too long to be read. */
export function openTableText(text: string): void {
  if (text.length > MOST_SIGNS) notify('error', allWordsNow().table.problem({ code: 'too-long' }, waysNow()));
  else openDialog({ kind: 'paste', text });
}

/** Opens a file in the window that reads tables. */
export async function openTable(file: File): Promise<void> {
  const { table: words } = allWordsNow();
  if (file.size > MOST_BYTES) {
    notify('error', words.problem({ code: 'too-long' }, waysNow()));
    return;
  }
  const bytes = await file.arrayBuffer().catch(() => null);
  const text = bytes && decodeTable(new Uint8Array(bytes));
  if (!text) notify('error', words.unreadableFile(file.name));
  else openTableText(text);
}
