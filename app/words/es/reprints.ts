import type { Words } from '../en';
import { counted, whole } from '../format';
import { copies } from './counts';

export const reprints: Words['reprints'] = {
  title: 'Reimpresiones en espera',
  hint: 'Van con la próxima distribución, o se unen a un tramo sin imprimir, si tiene sitio.',
  join: (span, run, ways) => `Unir al tramo ${whole(span + 1, ways)} de ${run}`,
  joinState: {
    draft: 'borrador',
    locked: 'enviada a imprimir: lo que queda vuelve a ser borrador, para bloquear y enviar de nuevo',
  },
  noRun: 'Ninguna tirada tiene un tramo abierto. La que se envió entera queda como está en su impresora.',
  joined: (count, spans, run, ways) =>
    `${copies(count, ways)} en ${spans.length > 1 ? 'los tramos' : 'el tramo'} ${spans.map((span) => whole(span + 1, ways)).join(' + ')} de ${run}.`,
  lockAgain: (run) =>
    `${run} vuelve a ser borrador, salvo lo impreso. Hay que bloquearla y enviar el resto de nuevo.`,
  noRoom: (run) => `${run} no tiene sitio en la película que usa. Esperan a la próxima distribución.`,
  onCard: (count, of, ways) =>
    of === 1 ? 'reimpresión' : counted(count, 'reimpresión', 'reimpresiones', ways),
};
