import type { Words } from '../en';
import { whole } from '../format';

export const name: Words['name'] = 'Rollwright';

export const skip: Words['skip'] = 'Ir al contenido';

export const framed: Words['framed'] =
  'Rollwright no se abre dentro de otra página. Hay que abrirlo en una pestaña propia.';

export const rooms: Words['rooms'] = {
  orders: 'Pedidos',
  film: 'Película',
  cut: 'Corte',
  press: 'Planchado',
  stock: 'Almacén',
  log: 'Registro',
  label: 'Salas',
};

export const common: Words['common'] = {
  cancel: 'Cancelar',
  close: 'Cerrar',
  save: 'Guardar',
  add: 'Añadir',
  remove: 'Quitar',
  dismiss: 'Entendido',
  yes: 'sí',
  no: 'no',
  more: (next, rest, ways) =>
    next === rest
      ? `Mostrar ${whole(rest, ways)} más`
      : `Mostrar ${whole(next, ways)} de ${whole(rest, ways)} más`,
};

export const kept: Words['kept'] = {
  saving: 'Guardando…',
  saved: (time) => `Guardado en este dispositivo, ${time}`,
  failed: 'Sin guardar',
  offline: 'funciona sin conexión',
  backup: (when) => `copia ${when}`,
  noBackup: 'sin copia de seguridad',
};

export const bands: Words['bands'] = {
  demo: 'Este es un día de muestra con pedidos inventados. Aquí se puede mirar y probar todo; los pedidos propios se guardan aparte.',
  leaveDemo: 'Empezar con pedidos propios',
  backToDemo: 'Ver el día de muestra',
  follows: 'Rollwright está abierto en otra pestaña, y allí se hacen los cambios. Esta solo los muestra.',
  takeOver: 'Trabajar aquí',
  readOnly:
    'No se ha cambiado nada: se trabaja en otra pestaña. Con «Trabajar aquí», arriba, se pasa a esta.',
  update: 'Hay una versión nueva lista.',
  updatedElsewhere:
    'Otra pestaña ya usa una versión más nueva. Esta sigue como está hasta que se cargue también aquí.',
  updateNow: 'Cargarla ahora',
  newer:
    'Lo que hay guardado aquí lo escribió una versión más nueva de Rollwright. Queda intacto. Recargar la página trae esa versión.',
};
