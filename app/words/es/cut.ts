import type { Words } from '../en';
import { counted, whole } from '../format';

export const cut: Words['cut'] = {
  title: 'Corte',
  span: (span, of, ways) => `Tramo ${whole(span + 1, ways)} de ${whole(of, ways)}`,
  spanChoice: 'Tramo',
  copyOf: (index, of, ways) => `Copia ${whole(index, ways)} de ${whole(of, ways)}`,
  cutOf: (index, of, ways) => `Corte ${whole(index, ways)} de ${whole(of, ways)}`,
  length: (own, other) => `${own} (${other})`,
  across: 'Cortar a lo ancho, a esa distancia del borde frontal de la pieza en la mano',
  along: 'Cortar a lo largo, a esa distancia del lado cercano de la pieza en la mano',
  off: (count, ways) => `${counted(count, 'copia', 'copias', ways)} en lo que se separa`,
  frees: (names) => `deja libre ${names}`,
  take: (name) => `Sacar ${name}`,
  done: 'Hecho, siguiente',
  back: 'Paso atrás',
  whole: 'Todo este tramo está cortado',
  wholeBack: 'Desmarcar este tramo',
  allCut: (count, ways) => `Este tramo está cortado: ${counted(count, 'copia', 'copias', ways)}.`,
  nextSpan: 'Tramo siguiente',
  pile: 'Lo que debe tener la pila',
  pileOf: (code, done, of, ways) => `${code}: ${whole(done, ways)} de ${whole(of, ways)}`,
  pileAll: 'La pila de toda la tirada',
  map: 'Plano de corte',
  nothing: 'Todavía no hay nada en la película de esta tirada, así que no hay nada que cortar.',
  closed: 'Esta tirada está cerrada: no queda nada que cortar.',
  draft:
    'Esta tirada es todavía un borrador: su distribución puede cambiar. Hay que bloquearla para imprimir antes de cortar.',
  before: 'Separar antes de empolvar: que la tinta húmeda no toque nada.',
  after: 'Separar después de curar.',
  spoiled: 'estropeado',
  plan: 'El tramo; lo que se corta ahora está marcado',
};
