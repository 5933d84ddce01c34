import type { Words } from '../en';
import { counted, listed, listedUpTo } from '../format';
import { copies, orders } from './counts';

export const bringBack: Words['bringBack'] = {
  lacks: 'No se puede leer todo. Aquí todavía no se ha tocado nada.',
  leftOut: 'Esto quedaría fuera; sigue donde está:',
  settings: (fields, ways) => `ajustes, como en un taller nuevo: ${listed(fields, ways)}`,
  allSettings: 'todos los ajustes, como en un taller nuevo',
  records: (what, names, ways) =>
    names.length > 0 ? `${what}: ${listedUpTo(20, names, 'más', ways)}` : what,
  images: (count, names, ways) =>
    `${counted(count, 'archivo de imagen', 'archivos de imagen', ways)}: ${listedUpTo(20, names, 'más', ways)}`,
  unsummed: (films, ways) =>
    `Los movimientos de alguna película no suman lo que queda de ella: ${listedUpTo(4, films, 'más', ways)}. Se añadiría uno con la diferencia. Aquí aún no se ha tocado nada.`,
  rest: 'Recuperar lo demás',
  leave: 'Dejar todo como está',
  lookInside: 'Ver qué hay',
  lookInsideNamed: (when) => `Ver qué hay en ${when}`,
  asOf: (when) => `Como estaba: ${when}`,
  reading: 'Leyendo la instantánea…',
  noOrders: 'En esta instantánea no hay ningún pedido.',
  choose: 'Hay que elegir los pedidos que vuelven a los datos de ahora.',
  asWaiting: 'Sus copias vuelven en espera. Los demás pedidos no se tocan; se deshace de una vez.',
  ordersOf: 'Pedidos de esta instantánea',
  order: (name, due, copyCount, ways) => `${name}, ${due}, ${copies(copyCount, ways)}`,
  due: (day) => `para ${day}`,
  noDate: 'sin fecha',
  stillHere: 'sigue aquí: vuelve como otro pedido',
  all: 'Elegir todos',
  none: 'No elegir ninguno',
  bringOrders: (count, ways) => (count === 0 ? 'Recuperar pedidos' : `Recuperar ${orders(count, ways)}`),
  broughtOrders: (orderCount, copyCount, ways) =>
    `De vuelta y en espera: ${orders(orderCount, ways)}, ${copies(copyCount, ways)}. Se puede deshacer.`,
  whole: 'Recuperar todo',
  wholeHint: 'Todo ello ocupa el lugar de lo que hay aquí, que antes se conserva como instantánea.',
  back: 'Volver a la lista',
};
