import type { Refusal } from '../../../src/layout';
import type { UnplacedReason } from '../../../src/packing';
import type { Turning } from '../../../src/units';
import { rulerLength, type Ways } from '../format';

export const unplaced: Record<UnplacedReason, string> = {
  'too-wide': 'es más ancho que la zona imprimible, incluso girado donde se permite',
  'too-long': 'es más largo de lo que permite un tramo o la película',
  'no-room': 'no ha encontrado sitio: el rollo es corto para todo',
};

const turned: Record<Turning, string> = {
  fixed: 'en Pedidos, «Se puede girar» dice que este transfer no gira',
  half: 'en Pedidos, «Se puede girar» le permite solo media vuelta',
  quarter: 'en Pedidos, «Se puede girar» le permite solo cuartos',
  any: 'puede estar en cualquier ángulo',
};

export function refusal(problem: Refusal, ways: Ways): string {
  switch (problem.code) {
    case 'outside-left':
    case 'outside-right':
      return 'ahí entraría en el lado no imprimible de la película';
    case 'before-lead':
      return 'ahí entraría en el margen inicial';
    case 'past-end':
      return 'la película no llega hasta ahí';
    case 'no-print':
      return 'esa película no se puede usar';
    case 'too-close':
      return `ahí quedaría a menos de ${rulerLength(problem.gap, ways)} de ${problem.other.order.code} ${problem.other.number}`;
    case 'no-knife-line':
      return `ya no cabría ningún corte recto, y ningún tramo puede pasar de ${rulerLength(problem.spanMax, ways)}`;
    case 'may-not-turn':
      return turned[problem.turning];
  }
}
