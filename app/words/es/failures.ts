import type { Words } from '../en';

export const failures: Words['failures'] = {
  layout:
    'No se ha podido calcular la distribución. Lo que había en la película sigue ahí. Hay que probar otra vez.',
  lock: 'La tirada no se pudo bloquear. Sigue como borrador; hay que intentarlo de nuevo.',
  trials:
    'No se han podido probar las distribuciones. La película sigue como estaba. Hay que probar otra vez.',
  schedule: 'No se ha podido calcular el plan del día. La tirada y sus marcas se conservan.',
  check: 'No se ha podido revisar el arte. La imagen se conserva; se puede revisar otra vez.',
  reading: (file) => `No se ha podido leer ${file}. El pedido sigue igual. Hay que probar otra vez.`,
  table: 'No se ha podido leer la tabla. No se ha añadido nada. Hay que probar otra vez.',
  outline: 'No se han podido dibujar los contornos. Las copias siguen en su sitio.',
  mend: 'No se ha podido arreglar la imagen. El arte sigue igual. Hay que probar otra vez.',
  backup:
    'No se ha podido guardar la copia de seguridad. Los pedidos se conservan aquí. Hay que probar otra vez.',
  restore: 'No se ha podido abrir la copia de seguridad. Lo que había sigue igual. Hay que probar otra vez.',
  printImage: 'No se ha podido guardar la imagen. La tirada sigue igual. Hay que probar otra vez.',
  demo: 'No se ha podido dibujar el arte de muestra. El día de muestra sigue sin él.',
  codes: 'No se han podido mirar los códigos. Lo leído antes se conserva. Hay que probar otra vez.',
  pdf: 'El PDF no se ha podido hacer. Hay que imprimir desde aquí, o probar otra vez.',
  missing:
    'Falta una parte de la aplicación, quizá tras una actualización: se puede volver a cargar con la red conectada. Todo lo introducido se conserva.',
  reload: 'Volver a cargar la aplicación',
  again: 'Probar otra vez',
};
