import { answer, DATABASES, openExisting } from './stores';

/** So many bytes are turned into text at once: the arguments of one call. */
const PIECE = 0x8000;

function base64(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += PIECE)
    text += String.fromCharCode(...bytes.subarray(at, at + PIECE));
  return btoa(text);
}

/** A stored value as JSON can say it: binary data as base 64 (RFC 4648, 4), named by its kind. */
async function plain(value: unknown): Promise<unknown> {
  if (value instanceof Blob)
    return { $blob: base64(new Uint8Array(await value.arrayBuffer())), type: value.type };
  if (value instanceof ArrayBuffer) return { $bytes: base64(new Uint8Array(value)) };
  if (ArrayBuffer.isView(value))
    return { $bytes: base64(new Uint8Array(value.buffer, value.byteOffset, value.byteLength)) };
  if (value instanceof Date) return { $date: value.toJSON() };
  if (Array.isArray(value)) return Promise.all(value.map(plain));
  if (typeof value !== 'object' || value === null) return value;
  const entries = value instanceof Map ? [...value] : Object.entries(value);
  return Object.fromEntries(
    await Promise.all(entries.map(async ([name, within]) => [String(name), await plain(within)])),
  );
}

/** All that is stored, and how many records could and could not be read. */
interface RawRecords {
  readonly file: Blob;
  readonly records: number;
  readonly unread: number;
}

/**
 * Every record of every database as a JSON file (RFC 8259), one at a time, so that no more than one is in memory as text. What cannot be
 * read is named with the reason, and ends nothing.
 */
export async function rawRecords(now: Date): Promise<RawRecords> {
  const parts: Blob[] = [];
  const write = (text: string) => parts.push(new Blob([text]));
  let [records, unread] = [0, 0];
  write(`{"format":"rollwright raw records","saved":${JSON.stringify(now.toJSON())},"stores":[`);
  let isFirst = true;
  const put = (line: unknown) => {
    write(`${isFirst ? '' : ','}\n${JSON.stringify(line)}`);
    isFirst = false;
  };
  for (const name of DATABASES) {
    try {
      const db = await openExisting(name);
      if (!db) continue;
      for (const store of db.objectStoreNames) {
        const read = () => db.transaction(store, 'readonly').objectStore(store);
        for (const key of await answer(read().getAllKeys())) {
          const where = { database: name, store, key: await plain(key) };
          try {
            put({ ...where, value: await plain(await answer(read().get(key))) });
            records += 1;
          } catch (error) {
            put({ ...where, unread: String(error) });
            unread += 1;
          }
        }
      }
      db.close();
    } catch (error) {
      put({ database: name, unread: String(error) });
      unread += 1;
    }
  }
  write(']}\n');
  return { file: new Blob(parts, { type: 'application/json' }), records, unread };
}
