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
