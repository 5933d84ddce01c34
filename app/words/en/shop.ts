/** The window where a shop says how it measures, pays and is spoken to. */
export const shop = {
  menu: 'Shop',
  title: 'Units and language',
  language: 'Language',
  unit: 'Measures',
  units: { mm: 'millimetres', in: 'inches' },
  temperature: 'Temperatures in',
  temperatures: { C: 'degrees Celsius', F: 'degrees Fahrenheit' },
  currency: 'Currency',
  licences: 'Licences of the packages that Rollwright is made with',
  noConversion:
    'Another currency converts nothing: every price keeps its figure, so 8.40 stays 8.40. Type the prices anew where they should be others.',
  notLoaded: 'The words of that language could not be loaded. Try again once there is a network.',
};
