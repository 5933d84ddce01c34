/** What is said where the app itself cannot be had: without the formats of figures, since the service worker says it. */
export const unavailable = {
  title: 'Rollwright cannot start',
  said: 'Files of the app are damaged or missing on this device and could not be fetched anew.',
  mend: 'All that was entered is kept. Connect to the network, then load this page again.',
  recovery: 'Save what is stored, or bring a snapshot back',
};
