/** The path of a Chromium that can be started. */
export function findChromium(): Promise<string>;
