/** What cannot be shown, and what can be done. */
export const trouble = {
  room: 'This room could not be shown. The others go on, and all that was entered is kept.',
  window: 'This window could not be shown. The rooms go on, and all that was entered is kept.',
  app: 'The app could not be shown. All that was entered is kept.',
  missing:
    'This part of the app is missing, perhaps after an update: load the app again while the network is on. All that was entered is kept.',
  notKept: 'The last changes are not on the disk yet. Save a backup before you load the app again.',
  recovery: 'Recovery page',
  report: 'Save a report',
  reportHint:
    'The report is a text file for whoever mends the app. Nothing of your orders is in it, and nothing is sent.',
  fileName: (day: string) => `rollwright report ${day}.txt`,
};
