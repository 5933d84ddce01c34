/** Colorants that a PDF knows by these names already (ISO 32000-2, 8.6.6.4). */
const KNOWN = new Set(['all', 'none', 'cyan', 'magenta', 'yellow', 'black', 'red', 'green', 'blue', 'gray']);

/** Letters, figures and signs of ASCII, with spaces between them, that every reader of a PDF or a TIFF takes. */
const PLAIN = /^[!-~]([ -~]{0,58}[!-~])?$/;

/** Whether an ink of one's own can be called so. */
export const isSpotName = (name: string): boolean => PLAIN.test(name) && !KNOWN.has(name.toLowerCase());
