/** What failed, and what was kept. */
export const failures = {
  layout: 'The layout could not be worked out. What lay on the film is still there; try again.',
  lock: 'The run could not be locked. It is a draft as before; try again.',
  trials: 'The layouts could not be tried. What lies on the film is as it was; try again.',
  schedule: 'The schedule could not be worked out. The run and all its ticks are kept.',
  check: 'The artwork could not be checked. The image is kept; look at it and check it again.',
  reading: (file: string) => `${file} could not be read just now. The order is as it was; try again.`,
  table: 'The table could not be read just now. Nothing was added; try again.',
  outline: 'The outlines could not be drawn. The copies lie as they did.',
  mend: 'The image could not be mended. The artwork is as it was; try again.',
  backup: 'The backup could not be written. All orders are kept on this device; try again.',
  restore: 'The backup could not be opened. What was here is as it was; try again.',
  printImage: 'The image could not be written. The run is as it was; try again.',
  demo: 'The demo artwork could not be drawn. The demo day goes on without it.',
  codes: 'The codes could not be looked at. What was read before is kept; try again.',
  pdf: 'The PDF could not be made. Print from here, or try again.',
  missing:
    'A part of the app is missing, perhaps after an update: load it again while the network is on. All that was entered is kept.',
  reload: 'Load the app again',
  again: 'Try again',
};
