import { hasPrivateFiles, type ImageTarget, openPrivateFolder } from '../../src/output/print-image/browser';
import { download } from '../files/download';
import { isDismissed, type Pickers } from '../files/pickers';

/** Where the images of one export go, in the order of their names. */
export interface Targets {
  readonly targets: readonly ImageTarget[];
  /** For what memory has no room for; `null` where there is no private file system. */
  readonly scratch: FileSystemFileHandle | null;
  /** Hands over what is written. */
  save(): Promise<void>;
  /** Lets go of all that is not the user's. */
  clear(): Promise<void>;
}

/** `unable`: the browser has no way to take a file of this size. */
export type NoTargets = 'dismissed' | 'unable';

/** Downloads of private files are read from them for a while after they were asked for. */
const GRACE = 300_000;

/** What files are, by how their names end. */
const KINDS: Readonly<Record<string, string>> = { '.pdf': 'application/pdf', '.tif': 'image/tiff' };

/** A file of a folder, numbered on where its name is taken: nothing that lies there is written over. */
async function newFile(folder: FileSystemDirectoryHandle, name: string): Promise<FileSystemFileHandle> {
  const [, stem = name, ending = ''] = /^(.*?)(\.[a-z]+)$/.exec(name) ?? [];
  for (let number = 1; ; number += 1) {
    const numbered = number === 1 ? name : `${stem} (${number})${ending}`;
    const isTaken = await folder.getFileHandle(numbered).then(
      () => true,
      () => false,
    );
    if (!isTaken) return folder.getFileHandle(numbered, { create: true });
  }
}

async function chosen(names: readonly string[]): Promise<FileSystemFileHandle[] | null> {
  const { showSaveFilePicker, showDirectoryPicker } = window as Pickers;
  const [only] = names;
  if (names.length === 1 && only !== undefined && showSaveFilePicker) {
    const ending = only.slice(only.lastIndexOf('.'));
    const accept = { [KINDS[ending] ?? 'image/png']: [ending] };
    return [await showSaveFilePicker({ suggestedName: only, types: [{ accept }] })];
  }
  if (names.length > 1 && showDirectoryPicker) {
    const folder = await showDirectoryPicker({ mode: 'readwrite' });
    const handles: FileSystemFileHandle[] = [];
    for (const name of names) handles.push(await newFile(folder, name));
    return handles;
  }
  return null;
}

/**
 * Asks where images of some names are to be saved, where the browser can ask; where it cannot, they are written to private
 * files and downloaded from there. To be called as soon as a button is pressed: browsers ask only then.
 */
export async function openTargets(names: readonly string[]): Promise<Targets | NoTargets> {
  let handles: FileSystemFileHandle[] | null;
  try {
    handles = await chosen(names);
  } catch (error) {
    if (isDismissed(error)) return 'dismissed';
    handles = null;
  }
  const folder = hasPrivateFiles() ? await openPrivateFolder().catch(() => null) : null;
  const scratch = (await folder?.file('scratch')) ?? null;
  if (handles) {
    return {
      targets: handles.map((handle) => ({ kind: 'chosen', handle })),
      scratch,
      save: async () => undefined,
      clear: async () => folder?.remove(),
    };
  }
  if (!folder) return 'unable';
  const own: FileSystemFileHandle[] = [];
  for (const name of names) own.push(await folder.file(name));
  let saved = false;
  return {
    targets: own.map((handle) => ({ kind: 'private', handle })),
    scratch,
    async save() {
      for (const handle of own) download(await handle.getFile(), handle.name);
      saved = true;
    },
    async clear() {
      if (saved) setTimeout(() => void folder.remove(), GRACE);
      else await folder.remove();
    },
  };
}
