import type { Question } from '../../../src/pressing';
import type { Temperature, TemperatureUnit } from '../../../src/units';
import type { Words } from '../en';
import { bothDegrees, rulerLength, type Ways, whole } from '../format';

/** Why a value of a recipe is asked about. */
function question(asked: Question, unit: TemperatureUnit, ways: Ways): string {
  const temperature = (value: Temperature) => bothDegrees(value, unit, ways.locale);
  switch (asked.code) {
    case 'other-unit':
      return `Esa cifra parece de la otra escala: las planchas se ponen a ${temperature(asked.meant)}. Hay que revisar la unidad.`;
    case 'scorches':
      return `Por encima de ${temperature(asked.most)} puede quemarse, quedar con brillo o amarillear.`;
    case 'dye-migrates':
      return `Por encima de ${temperature(asked.most)} el tinte del poliéster puede subir al estampado.`;
    case 'melts-nothing':
      return `Por debajo de ${temperature(asked.least)} el polvo apenas funde y no agarrará.`;
    case 'too-short':
      return `Menos de ${whole(asked.least, ways)} s apenas bastan para que el polvo fluya.`;
    case 'too-long':
      return `Más de ${whole(asked.most, ways)} s es más de lo habitual y puede dañar estampado y tejido.`;
    case 'pre-press-long':
      return `Un planchado previo de más de ${whole(asked.most, ways)} s no seca nada más y puede quemar.`;
    case 'second-press-long':
      return `Un segundo planchado de más de ${whole(asked.most, ways)} s es más largo de lo habitual.`;
    case 'wait-long':
      return `La película está fría a los ${whole(asked.most, ways)} s; esperar más solo cuesta tiempo.`;
    case 'clear-off':
      return `Una placa queda suspendida de ${rulerLength(asked.least, ways)} a ${rulerLength(asked.most, ways)} sobre la película. Más cerca puede tocarla, más lejos apenas calienta.`;
  }
}

export const recipeForm: Words['recipeForm'] = {
  title: 'Recetas',
  groups: { press: 'En la plancha', around: 'Planchado previo, pelado y hoja', source: 'Fuente y notas' },
  film: 'La película se pela',
  which: 'Para',
  pressing: 'Planchado',
  curing: 'Curado',
  temperature: (unit) => `Temperatura (°${unit})`,
  pressure: 'Presión',
  small: 'Segundos, transfers pequeños',
  large: (from) => `Segundos, de ${from} en adelante`,
  wait: 'Espera antes de pelar, segundos',
  prePress: 'Planchado previo, segundos',
  second: 'Segundo planchado, segundos',
  cover: 'Hoja protectora',
  seconds: 'Segundos',
  clear: 'Altura sobre la película',
  origin: 'Estos valores son',
  notes: 'Notas',
  save: 'Guardar esta receta',
  keepAnyway: 'Guardarla de todos modos',
  saved: 'La receta está guardada; lo que era antes queda en su historia.',
  history: 'Antes',
  until: (when) => `hasta ${when}`,
  questioned: '¿Es lo que se quería?',
  question,
};
