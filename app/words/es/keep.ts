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
  unavailable:
    'Este navegador no deja que Rollwright guarde nada, como en una ventana privada. Se puede trabajar, pero todo se pierde al cerrar la pestaña.',
  closed:
    'El almacenamiento se cerró desde fuera. Los últimos cambios están solo en la memoria; pulsar «Probar otra vez».',
  blocked:
    'Otra pestaña con una versión anterior ocupa el almacenamiento. Cerrar las demás pestañas de Rollwright y pulsar «Probar otra vez».',
  overtaken: 'Ahora escribe otra pestaña. Lo último que cambió aquí quizá no se guardó; conviene revisarlo.',
  unknown: 'Los últimos cambios no se han podido guardar. Siguen en la memoria; pulsar «Probar otra vez».',
  retry: 'Probar otra vez',
  opening: 'Abriendo los pedidos…',
};
