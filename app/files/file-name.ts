/** A name that every file system takes. */
export const safeName = (name: string): string => name.replace(/[\\/:*?"<>|]+/g, ' ').trim();
