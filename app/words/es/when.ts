import type { Moment } from '../format';

/** «a las 09:21», «a la 1:05 p. m.», «el sáb a las 09:21» */
export const when = ({ day, time }: Moment): string =>
  `${day === null ? '' : `el ${day} `}${/^0?1\D/.test(time) ? 'a la' : 'a las'} ${time}`;
