import type { Words } from '../en';
import { copies, orders } from './counts';

export const keep: Words['keep'] = {
  title: 'Guardado y copias de seguridad',
  backups: 'Copia de seguridad',
  never:
    'Todavía no hay ninguna copia de seguridad. Es un solo archivo con todos los pedidos, tiradas y artes; conviene tenerlo en otro equipo.',
  last: (when) => `La última copia de seguridad es del ${when}.`,
  save: 'Guardar una copia de seguridad',
  restore: 'Recuperar una copia de seguridad',
  restoreHint:
    'Se comprueba el archivo entero antes de tocar nada, y lo que hay aquí se conserva como instantánea.',
  fileName: (day) => `rollwright copia de seguridad ${day}.zip`,
  restored: (count, ways) =>
    `De vuelta: ${orders(count, ways)}. Lo que había antes es la primera instantánea.`,
  problems: {
    'not-backup': 'Este archivo no es una copia de seguridad de Rollwright. Aquí no ha cambiado nada.',
    damaged:
      'Esta copia de seguridad está dañada: le falta una parte o se ha modificado. Aquí no ha cambiado nada.',
    newer:
      'Esta copia de seguridad la hizo una versión más nueva de Rollwright. Recargar la página para tener esa versión y probar otra vez.',
    'not-kept':
      'La copia de seguridad no se ha podido guardar aquí, quizá porque el disco está lleno o escribe otra pestaña. Aquí no ha cambiado nada.',
  },
  snapshots: 'Como estaba',
  noSnapshots: 'La primera vez que se abre cada día se toma una instantánea.',
  snapshot: (why, orderCount, copyCount, ways) =>
    `${why === 'day' ? 'al abrir ese día' : 'antes de recuperar algo'}: ${orders(orderCount, ways)}, ${copies(copyCount, ways)}`,
  bringBack: 'Recuperar',
  bringBackNamed: (when) => `Recuperar ${when}`,
  broughtBack: 'Así estaba. Lo que había antes es la primera instantánea.',
  notBroughtBack:
    'No se ha podido recuperar, quizá porque el disco está lleno o escribe otra pestaña. Aquí no ha cambiado nada.',
  durable: 'Para que no se borre',
  isDurable: 'El navegador conserva estos datos aunque el disco esté casi lleno.',
  mayBeCleared: 'El navegador puede borrar los datos guardados cuando el disco está casi lleno.',
  ask: 'Pedir al navegador que los conserve',
  notDurable:
    'El navegador no ha aceptado. Instalar la aplicación o guardarla en marcadores y pedirlo otra vez, y hacer copias de seguridad.',
};

export const storage: Words['storage'] = {
  quota:
    'El disco está lleno, así que los últimos cambios están solo en la memoria. Liberar espacio y pulsar «Probar otra vez» antes de cerrar esta pestaña.',
  closed:
    'El almacenamiento se cerró desde fuera. Los últimos cambios están solo en la memoria; pulsar «Probar otra vez».',
  unavailable:
    'Este navegador ya no deja que Rollwright guarde nada. Los últimos cambios están solo en la memoria.',
  blocked:
    'El almacenamiento no responde, así que los últimos cambios están solo en la memoria. Cerrar las demás pestañas de Rollwright y pulsar «Probar otra vez».',
  overtaken: 'Ahora escribe otra pestaña. Lo último que cambió aquí quizá no se guardó; conviene revisarlo.',
  unknown: 'Los últimos cambios no se han podido guardar. Siguen en la memoria; pulsar «Probar otra vez».',
  whyInMemory: {
    unavailable: 'Este navegador no deja que Rollwright guarde nada, como en una ventana privada.',
    blocked:
      'El almacenamiento no responde. Cerrar las demás pestañas de Rollwright y pulsar «Probar otra vez».',
    unreadable:
      'Lo guardado aquí no se puede abrir; queda intacto. Reiniciar el navegador y pulsar «Probar otra vez».',
  },
  inMemory:
    'Se puede trabajar, pero solo en la memoria: todo se pierde al cerrar esta pestaña. Conviene guardar antes una copia.',
  gone: 'Los pedidos propios se guardaban en este navegador y su almacenamiento está ahora vacío. Se borró o se dañó. Se puede recuperar una copia o un estado anterior, o empezar de nuevo.',
  bringBack: 'Buscar qué recuperar',
  startAnew: 'Empezar de nuevo',
  meanwhile:
    'Los pedidos guardados han vuelto. Lo escrito mientras no se guardaba nada es el primer estado anterior.',
  retry: 'Probar otra vez',
  opening: 'Abriendo los pedidos…',
};
