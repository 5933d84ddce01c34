import type { recovery as en } from '../en/recovery';

export const recovery: typeof en = {
  title: 'Rollwright: recuperación',
  lead: 'Esta página sirve cuando la aplicación no se abre, o se abre sin los pedidos. Nada cambia sin confirmarlo.',
  open: 'Abrir la aplicación',
  copyTitle: 'Guardar todo lo almacenado',
  copy: 'Guarda en un archivo todos los registros e imágenes de este navegador, tal como están. No cambia nada.',
  copyAct: 'Guardar los registros',
  copyWorking: 'Leyendo todo lo almacenado…',
  copyDone: (records, unread) => `Guardado: ${records} registros. Ilegibles: ${unread}.`,
  copyFile: (day) => `registros de rollwright ${day}.json`,
  nothing: 'No hay nada almacenado en este navegador bajo esta dirección.',
  snapshotsTitle: 'Recuperar una instantánea',
  snapshots:
    'Los datos vuelven a estar como en ese momento. Lo almacenado ahora se conserva antes como otra instantánea.',
  none: 'No hay ninguna instantánea en este navegador.',
  held: (orders, copies) => `pedidos: ${orders}, copias: ${copies}`,
  unreadable: 'no se puede leer aquí; se ha dejado como está',
  bring: 'Recuperar',
  bringNamed: (when) => `Recuperar ${when}`,
  bringAsk: (when) =>
    `¿Devolver los datos a como estaban el ${when}? Lo almacenado ahora se conserva como instantánea.`,
  broughtBack: (when) => `Los datos están como el ${when}. Hay que abrir la aplicación para seguir.`,
  writes:
    'Otra pestaña tiene los datos abiertos; no se ha cambiado nada. Hay que cerrar las demás pestañas de Rollwright y repetir.',
  damaged: 'Esta instantánea está dañada; no se ha cambiado nada. Hay que elegir otra.',
  notWritten:
    'No se han podido guardar los datos; no se ha cambiado nada. Hay que liberar espacio en el disco y repetir.',
  resetTitle: 'Volver a descargar la aplicación',
  reset:
    'Elimina los archivos guardados de la aplicación, no los registros. Después se descarga de nuevo por la red.',
  resetAct: 'Eliminar los archivos de la aplicación',
  resetAsk:
    '¿Eliminar los archivos guardados de la aplicación? Los registros se quedan. Hace falta red para volver a abrirla.',
  resetDone:
    'Los archivos de la aplicación se han eliminado. Hay que abrir la aplicación con la red conectada.',
  failed: (why) => `No ha funcionado, y no se ha cambiado nada: ${why}`,
};
