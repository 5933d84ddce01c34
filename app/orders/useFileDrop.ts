import { type DragEvent, useState } from 'react';

/** Takes files that are dropped on an element, and not on one within that takes them itself: what to spread on it, and whether files hang over it. */
export function useFileDrop(onFiles: (files: readonly File[]) => void) {
  const [dropping, setDropping] = useState(false);
  const target = {
    onDragOver: (event: DragEvent) => {
      event.preventDefault();
      event.stopPropagation();
      setDropping(true);
    },
    onDragLeave: () => setDropping(false),
    onDrop: (event: DragEvent) => {
      event.preventDefault();
      event.stopPropagation();
      setDropping(false);
      onFiles([...event.dataTransfer.files]);
    },
  };
  return { dropping, target };
}
