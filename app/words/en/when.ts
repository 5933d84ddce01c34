import type { Moment } from '../format';

/** `09:21`, `Sat 09:21` */
export const when = ({ day, time }: Moment): string => (day === null ? time : `${day} ${time}`);
