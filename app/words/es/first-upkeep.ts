import type { FirstWords } from '../en';

export const upkeep: FirstWords['upkeep'] = {
  checks: {
    'white-stirred': 'Tinta blanca removida o en circulación',
    nozzles: 'Prueba de inyectores impresa y revisada',
    'film-square': 'Película derecha en la alimentación',
    'powder-dry': 'Polvo seco y sin grumos',
    blade: 'Cuchilla afilada, ranura limpia',
    room: 'Temperatura y humedad del taller medidas',
    capping: 'Estación de tapado y limpiador limpios',
    parked: 'Cabezal estacionado y tapado para la noche',
    filters: 'Filtros y ventiladores sin polvo',
    platen: 'Temperatura de la placa medida con sonda',
    'waste-ink': 'Tinta residual vaciada',
    rollers: 'Rodillos de alimentación limpios',
    'deep-clean': 'Alrededores del cabezal limpios',
  },
  line: (list, more) => `Mantenimiento pendiente: ${list}${more > 0 ? `; y ${more} más` : ''}.`,
  lineNever: 'Todavía no hay mantenimiento anotado.',
  pastDate: (list) => `Caducado: ${list}.`,
  open: 'Mantenimiento',
};
