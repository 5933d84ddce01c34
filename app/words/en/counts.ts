import { counted, type Ways } from '../format';

export const copies = (count: number, ways: Ways) => counted(count, 'copy', 'copies', ways);
export const transfers = (count: number, ways: Ways) => counted(count, 'transfer', 'transfers', ways);
export const orders = (count: number, ways: Ways) => counted(count, 'order', 'orders', ways);
