import type { Words } from '../en';

export const shop: Words['shop'] = {
  menu: 'Taller',
  title: 'Unidades e idioma',
  language: 'Idioma',
  unit: 'Medidas',
  units: { mm: 'milímetros', in: 'pulgadas' },
  temperature: 'Temperaturas en',
  temperatures: { C: 'grados Celsius', F: 'grados Fahrenheit' },
  currency: 'Moneda',
  licences: 'Licencias de los paquetes con que está hecho Rollwright',
  noConversion:
    'Cambiar de moneda no convierte nada: cada precio conserva su cifra, y 8,40 sigue siendo 8,40. Los precios que deban ser otros se escriben de nuevo.',
  notLoaded:
    'No se han podido cargar los textos de ese idioma. Hay que probar otra vez cuando haya conexión.',
};
