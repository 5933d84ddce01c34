import type { unavailable as en } from '../en/unavailable';

export const unavailable: typeof en = {
  title: 'Rollwright no puede arrancar',
  said: 'Faltan archivos de la aplicación en este dispositivo, o están dañados, y no se han podido volver a descargar.',
  mend: 'Todo lo introducido se conserva. Hay que conectarse a la red y volver a cargar esta página.',
  recovery: 'Guardar lo almacenado, o recuperar una instantánea',
};
