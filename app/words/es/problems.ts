import type { Words } from '../en';

export const lengthProblems: Words['lengthProblems'] = {
  empty: 'Hay que escribir una longitud, como 89 mm o 3 1/2 in.',
  unreadable:
    'Esto no es una longitud. Hay que escribir un número con unidad o sin ella, como 89 mm, 8,9 cm o 3 1/2 in.',
  'not-positive': 'Una longitud tiene que ser mayor que cero.',
  'too-long': 'Esto es más largo que cualquier película. Hay que revisar la unidad.',
};

export const moneyProblems: Words['moneyProblems'] = {
  empty: 'Hay que escribir un importe, 0 si no cuesta nada.',
  unreadable: 'Esto no es un importe. Hay que escribir solo cifras, como 8,40.',
  negative: 'Un precio no puede ser menor que cero.',
  'too-much': 'Esto es más de lo que cuesta cualquier película. Hay que revisar las cifras.',
  'other-currency':
    'Esa moneda no es la del taller. Aquí no se convierte nada: hay que calcular el importe y escribirlo en la moneda del taller.',
};

export const rateProblems: Words['rateProblems'] = {
  ...moneyProblems,
  unreadable:
    'Esto no es un precio. Hay que escribir cifras, con aquello por lo que se paga o sin ello, como 150 o 0,15 / ml.',
  'too-much': 'Esto es más de lo que cuesta nada. Hay que revisar las cifras y la unidad.',
  zero: 'Con cero desaparecería de todos los costos. Hay que dejar el campo vacío para no contarlo; la hoja de costos lo dice entonces.',
};

export const shareProblems: Words['shareProblems'] = {
  empty: 'Hay que escribir un porcentaje, 0 para ninguno.',
  unreadable: 'Esto no es un porcentaje. Hay que escribir un número, como 2,5.',
  negative: 'Aquí un porcentaje no puede ser menor que cero.',
  'too-much': 'Este porcentaje es demasiado alto para lo que mide.',
};

export const amountProblems: Words['amountProblems'] = {
  empty: 'Hay que escribir una cantidad, como 6 ml o 100 g; 0 para ninguna.',
  unreadable:
    'Esto no es una cantidad. Hay que escribir un número, con unidad o sin ella, como 6 ml o 100 g.',
  negative: 'Una cantidad no puede ser menor que cero.',
  'too-much': 'Ningún taller guarda tanto. Hay que revisar la unidad.',
};

export const dateProblems: Words['dateProblems'] = {
  empty: 'Falta la fecha.',
  unreadable: 'Esto no es una fecha. Hay que escribirla como 2026-11-27 o 27 nov 2026.',
  'no-such-day': 'Ese día no existe en el calendario.',
  ambiguous: 'Esto puede ser dos días distintos. Hay que decir abajo si va primero el día o el mes.',
};

export const temperatureProblems: Words['temperatureProblems'] = {
  empty: 'Hay que escribir una temperatura, como 160 C o 320 F.',
  unreadable: 'Esto no es una temperatura. Hay que escribir un número, con C o F o sin ellas.',
  impossible: 'Ninguna plancha ni horno llega ahí. Hay que revisar la cifra.',
};

export const hoursProblems: Words['hoursProblems'] = {
  unreadable: 'Hay que escribir horas como 8:00–12:00, 12:30–17:00.',
  'ends-first':
    'Estas horas acaban antes de empezar. Primero va la hora más temprana, por ejemplo 8:00–17:00.',
  overlap: 'Dos de estas horas coinciden en parte. Cada una empieza cuando acaba la anterior.',
};

export const durationProblems: Words['durationProblems'] = {
  empty: 'Hay que escribir un tiempo, como 15 s o 2,5 min.',
  unreadable: 'Esto no es una duración. Hay que escribir un número, con s o min o sin ellos.',
  'too-long': 'Es más de un día. Hay que revisar la cifra.',
};
