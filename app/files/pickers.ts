/** What the File System Access API adds to a window; not every browser has it. */
export interface Pickers {
  showSaveFilePicker?: (options: {
    suggestedName: string;
    types: readonly { accept: Readonly<Record<string, readonly string[]>> }[];
  }) => Promise<FileSystemFileHandle>;
  showDirectoryPicker?: (options: { mode: 'readwrite' }) => Promise<FileSystemDirectoryHandle>;
}

/** Whether a question for a file or a folder failed since it was dismissed. */
export const isDismissed = (error: unknown): boolean =>
  error instanceof DOMException && error.name === 'AbortError';

/** What the File System Access API adds to a handle: a browser may ask anew each time the app is opened. */
export interface Permitted {
  queryPermission?: (options: { mode: 'readwrite' }) => Promise<PermissionState>;
  requestPermission?: (options: { mode: 'readwrite' }) => Promise<PermissionState>;
}

/** Whether the browser can be asked for a folder. */
export const hasFolders = (): boolean => (window as Pickers).showDirectoryPicker !== undefined;

/** A folder that the user chooses; `null` if it was dismissed, or the browser lets none be chosen. */
export async function askForFolder(): Promise<FileSystemDirectoryHandle | null> {
  try {
    return (await (window as Pickers).showDirectoryPicker?.({ mode: 'readwrite' })) ?? null;
  } catch (error) {
    if (isDismissed(error)) return null;
    throw error;
  }
}
