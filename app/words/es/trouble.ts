import type { Words } from '../en';

export const trouble: Words['trouble'] = {
  room: 'Esta sala no se ha podido mostrar. Las demás siguen, y todo lo introducido se conserva.',
  window: 'Esta ventana no se ha podido mostrar. Las salas siguen, y todo lo introducido se conserva.',
  app: 'La aplicación no se ha podido mostrar. Todo lo introducido se conserva.',
  missing:
    'Falta esta parte de la aplicación, quizá tras una actualización: hay que volver a cargarla con la red conectada. Todo se conserva.',
  notKept:
    'Los últimos cambios aún no están en el disco. Antes de volver a cargar conviene guardar una copia de seguridad.',
  recovery: 'Página de recuperación',
  report: 'Guardar un informe',
  reportHint:
    'El informe es un archivo de texto para quien repare la aplicación. No contiene nada de los pedidos ni se envía.',
  fileName: (day) => `rollwright informe ${day}.txt`,
};
