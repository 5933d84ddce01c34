import type { SnapshotReason } from '../../../src/storage';
import type { Words } from '../en';
import { copies, orders } from './counts';
import { keep as first } from './first-keep';

const tooMuch = {
  book: 'unos datos de más de 100 MB',
  image: 'una imagen de más de 200 MB',
  total: 'más de 4 GB en total',
  images: 'más de 20.000 imágenes',
  ratio: 'una parte que ocupa más de 200 veces su tamaño',
  text: 'un texto de más de un millón de caracteres',
};

const reasons: Readonly<Record<SnapshotReason, string>> = {
  hour: 'de esa hora',
  day: 'al abrir ese día',
  'before-restoring': 'antes de recuperar algo',
  'before-migrating': 'antes de pasar a una versión más nueva',
};

export const keep: Words['keep'] = {
  ...first,
  title: 'Almacenamiento y copias de seguridad',
  backups: 'Copia de seguridad',
  never:
    'Todavía no hay ninguna copia de seguridad. Es un solo archivo con todos los pedidos, tiradas y arte; conviene tenerlo en otro dispositivo.',
  last: (when) => `La última copia de seguridad es del ${when}.`,
  restore: 'Recuperar una copia de seguridad',
  restoreHint:
    'Se comprueba el archivo entero antes de tocar nada, y lo que hay aquí se conserva como instantánea.',
  restored: (count, ways) =>
    `De vuelta: ${orders(count, ways)}. Lo que había antes es la primera instantánea.`,
  unverified:
    'Esta copia de seguridad es de una versión anterior y no lleva lista de imágenes. Conviene mirar si están todas.',
  leftOut: (images) =>
    `Estas imágenes no están en la copia de seguridad, porque su archivo falta, está alterado o es demasiado grande: ${images.join(', ')}.`,
  differs:
    'Lo que se ha escrito no es lo que había que guardar. Ese archivo no sirve; hay que guardar la copia de seguridad en otro sitio.',
  problems: (problem) => {
    switch (problem.code) {
      case 'not-backup':
        return 'Este archivo no es una copia de seguridad de Rollwright. Aquí no ha cambiado nada.';
      case 'damaged':
        return 'Esta copia de seguridad está dañada: le falta una parte o se ha modificado. Aquí no ha cambiado nada.';
      case 'newer':
        return 'Esta copia de seguridad la hizo una versión más nueva de Rollwright. Hay que recargar la página para tener esa versión y probar otra vez.';
      case 'part-missing':
        return 'Falta una parte de Rollwright para leer esta copia de una versión anterior. Aquí no ha cambiado nada. Hay que recargar la página con la red conectada y probar otra vez.';
      case 'too-much':
        return `Esta copia contiene ${tooMuch[problem.of]}, más de lo que necesita un taller. Aquí no ha cambiado nada. Hay que elegir otro archivo.`;
      case 'not-kept':
        return 'La copia de seguridad no se ha podido guardar: el disco está lleno, o se trabaja en otra pestaña. Aquí no ha cambiado nada.';
    }
  },
  folder: {
    title: 'Copias de seguridad automáticas',
    none: 'Se elige una carpeta, mejor en otro disco: en cada hora de trabajo se guarda allí una copia. Un archivo por día; se conservan treinta.',
    choose: 'Elegir una carpeta',
    another: 'Otra carpeta',
    leave: 'Ya no',
    chosen: (name) =>
      `En cada hora de trabajo se guarda una copia en la carpeta «${name}». Un archivo por día; se conservan treinta.`,
    last: (when) => `La última es del ${when}.`,
    waits: (name) => `Las copias de seguridad en la carpeta «${name}» esperan un nuevo permiso.`,
    allow: 'Permitir',
    failed: (name) =>
      `La copia de seguridad no se ha podido escribir en la carpeta «${name}». Hay que mirar si la carpeta está y tiene sitio.`,
    cannot:
      'Este navegador no puede escribir en una carpeta por su cuenta. Conviene guardar una copia al final de cada día.',
    refused: 'El navegador no deja usar esta carpeta. Hay que elegir otra.',
  },
  snapshots: 'Instantáneas',
  noSnapshots:
    'Se toma una instantánea en cada hora de trabajo. Se conservan un día, y una de cada día durante un mes.',
  snapshot: (why, orderCount, copyCount, ways) =>
    `${reasons[why]}: ${orders(orderCount, ways)}, ${copies(copyCount, ways)}`,
  unreadableSnapshot: 'no se puede leer; se ha dejado como está',
  snapshotProblems: {
    gone: (when) => `La instantánea del ${when} ya no está. Aquí no ha cambiado nada.`,
    damaged: (when) =>
      `La instantánea del ${when} no se puede leer entera. Se ha dejado como está, y aquí no ha cambiado nada.`,
    newer: (when) =>
      `La instantánea del ${when} es de una versión más nueva de Rollwright. Hay que recargar la página y probar otra vez.`,
    'part-missing': (when) =>
      `Falta una parte de Rollwright para leer la instantánea del ${when}, de una versión anterior. Aquí no ha cambiado nada. Hay que recargar la página con la red conectada y probar otra vez.`,
    'not-kept': (when) =>
      `La instantánea del ${when} no se ha podido recuperar: el disco está lleno o se trabaja en otra pestaña. Aquí no ha cambiado nada.`,
  },
  bringBack: 'Recuperar',
  bringBackNamed: (when) => `Recuperar ${when}`,
  broughtBack: 'Así estaba. Lo que había antes es la primera instantánea.',
  durable: 'Para que no se borre',
  isDurable: 'El navegador conserva estos datos aunque el disco esté casi lleno.',
  mayBeCleared: 'El navegador puede borrar los datos guardados cuando el disco está casi lleno.',
  ask: 'Pedir al navegador que los conserve',
  notDurable:
    'El navegador no ha aceptado. Hay que instalar la aplicación o guardarla en marcadores y pedirlo otra vez, y hacer copias de seguridad.',
};
