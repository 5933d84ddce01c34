import type { Book, StockItem } from '../model';

/** What is noted of an item's box; nothing of a film that nobody has noted anything of. */
export const boxOf = (book: Pick<Book, 'item'>, id: string): StockItem | null => book.item[id] ?? null;
