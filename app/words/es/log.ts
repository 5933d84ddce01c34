import type { Words } from '../en';
import { counted } from '../format';

export const log: Words['log'] = {
  title: 'Registro',
  head: (runs, ways) => counted(runs, 'tirada cerrada', 'tiradas cerradas', ways),
  empty:
    'Todavía no hay nada cerrado. Una tirada que se cierra en la sala Planchado queda aquí con lo que se preveía gastar y lo que gastó.',
  toPress: 'A la sala Planchado',
  table: 'Tiradas cerradas',
  run: 'Tirada',
  day: 'Cerrada',
  film: 'Película',
  waste: 'Merma',
  colour: 'Tinta de color',
  white: 'Tinta blanca',
  powder: 'Polvo',
  minutes: 'Manos',
  spoiled: 'Estropeado',
  planned: 'previsto',
  notMeasured: 'sin medir',
  none: 'nada',
};
