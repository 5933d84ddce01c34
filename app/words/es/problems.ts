import type { Words } from '../en';

export const lengthProblems: Words['lengthProblems'] = {
  empty: 'Escribir una longitud, como 89 mm o 3 1/2 in.',
  unreadable:
    'Esto no es una longitud. Escribir un número con unidad o sin ella, como 89 mm, 8,9 cm o 3 1/2 in.',
  'not-positive': 'Una longitud tiene que ser mayor que cero.',
  'too-long': 'Esto es más largo que cualquier película. Revisar la unidad.',
};

export const moneyProblems: Words['moneyProblems'] = {
  empty: 'Escribir un importe, 0 si no cuesta nada.',
  unreadable: 'Esto no es un importe. Escribir solo cifras, como 8,40.',
  negative: 'Un precio no puede ser menor que cero.',
  'too-much': 'Esto es más de lo que cuesta cualquier película. Revisar las cifras.',
};

export const dateProblems: Words['dateProblems'] = {
  empty: 'Falta la fecha.',
  unreadable: 'Esto no es una fecha. Escribirla como 2026-11-27.',
  'no-such-day': 'Ese día no existe en el calendario.',
  ambiguous: 'Esto puede ser dos días distintos. Decir abajo si va primero el día o el mes.',
};

export const temperatureProblems: Words['temperatureProblems'] = {
  empty: 'Escribir una temperatura, como 160 C o 320 F.',
  unreadable: 'Esto no es una temperatura. Escribir un número, con C o F o sin ellas.',
  impossible: 'Ninguna plancha ni horno llega ahí. Revisar la cifra.',
};

export const durationProblems: Words['durationProblems'] = {
  empty: 'Escribir un tiempo, como 15 s o 2,5 min.',
  unreadable: 'Esto no es una duración. Escribir un número, con s o min o sin ellos.',
  'too-long': 'Es más de un día. Revisar la cifra.',
};
