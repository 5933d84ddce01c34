import type { Moment } from '../format';

/** «a las 09:21», «el sáb a las 09:21» */
export const when = ({ day, time }: Moment): string => `${day === null ? '' : `el ${day} `}a las ${time}`;
