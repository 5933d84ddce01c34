import type { Words } from '../en';

export const failures: Words['failures'] = {
  layout: 'No se ha podido calcular la distribución. Lo que había en la película sigue ahí; probar otra vez.',
  trials: 'No se han podido probar las distribuciones. La película sigue como estaba; probar otra vez.',
  schedule: 'No se ha podido calcular el plan del día. La tirada y sus marcas se conservan.',
  check: 'No se ha podido comprobar el arte. La imagen se conserva; se puede comprobar otra vez.',
  reading: (file) => `No se ha podido leer ${file}. El pedido sigue igual; probar otra vez.`,
  table: 'No se ha podido leer la tabla. No se ha añadido nada; probar otra vez.',
  outline: 'No se han podido dibujar los contornos. Las copias siguen en su sitio.',
  mend: 'No se ha podido arreglar la imagen. El arte sigue igual; probar otra vez.',
  backup: 'No se ha podido escribir la copia de seguridad. Los pedidos se conservan aquí; probar otra vez.',
  restore: 'No se ha podido abrir la copia de seguridad. Lo que había sigue igual; probar otra vez.',
  printImage: 'No se ha podido escribir la imagen. La tirada sigue igual; probar otra vez.',
  demo: 'No se ha podido dibujar el arte de muestra. El día de muestra sigue sin él.',
  codes: 'No se han podido mirar los códigos. Lo leído antes se conserva; probar otra vez.',
  pdf: 'El PDF no se ha podido hacer. Imprimir desde aquí, o probar otra vez.',
  missing:
    'Falta una parte de la aplicación, quizá tras una actualización: se puede volver a cargar con la red conectada. Todo lo introducido se conserva.',
  reload: 'Volver a cargar la aplicación',
  again: 'Probar otra vez',
};
