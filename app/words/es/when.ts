import type { Moment } from '../format';

/** «antes de las 09:21», «antes del sáb a las 09:21» */
export const before = ({ day, time }: Moment): string =>
  day === null ? `antes de las ${time}` : `antes del ${day} a las ${time}`;

/** «a las 09:21», «el sáb a las 09:21» */
export const when = ({ day, time }: Moment): string => `${day === null ? '' : `el ${day} `}a las ${time}`;
