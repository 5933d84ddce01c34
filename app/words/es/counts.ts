import { counted, type Ways } from '../format';

export const copies = (count: number, ways: Ways) => counted(count, 'copia', 'copias', ways);
export const transfers = (count: number, ways: Ways) => counted(count, 'transfer', 'transfers', ways);
export const orders = (count: number, ways: Ways) => counted(count, 'pedido', 'pedidos', ways);
