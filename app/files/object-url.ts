/** Long enough for an image or a download that was just told to load. */
const GRACE = 60_000;

/** Frees an object URL, but not at once: whatever is still on its way to it would fail to load. */
export function freeLater(url: string): void {
  setTimeout(() => URL.revokeObjectURL(url), GRACE);
}
