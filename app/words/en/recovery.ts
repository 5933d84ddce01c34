/** What the page says that stands apart from the app: without the formats of figures, since nothing of the app may be needed. */
export const recovery = {
  title: 'Rollwright: recovery',
  lead: 'Come here when the app does not open, or opens without your orders. Nothing changes before you agree.',
  open: 'Open the app',
  copyTitle: 'Save all that is stored',
  copy: 'Saves every record and image of this browser into one file, as they lie there. It changes nothing.',
  copyAct: 'Save the records',
  copyWorking: 'Reading all that is stored…',
  copyDone: (records: string, unread: string) => `Saved: ${records} records. Not readable: ${unread}.`,
  copyFile: (day: string) => `rollwright records ${day}.json`,
  nothing: 'Nothing is stored in this browser under this address.',
  snapshotsTitle: 'Bring a snapshot back',
  snapshots:
    'Puts your book back as it was at that time. What is stored now is kept as another snapshot first.',
  none: 'There is no snapshot in this browser.',
  held: (orders: string, copies: string) => `orders: ${orders}, copies: ${copies}`,
  unreadable: 'cannot be read here; it was left as it is',
  bring: 'Bring back',
  bringNamed: (when: string) => `Bring back ${when}`,
  bringAsk: (when: string) =>
    `Bring the book back as it was on ${when}? What is stored now is kept as a snapshot.`,
  broughtBack: (when: string) => `The book is as it was on ${when}. Open the app to go on.`,
  writes:
    'Another tab has the book open, so nothing was changed. Close all other Rollwright tabs, then try again.',
  damaged: 'This snapshot is damaged, so nothing was changed. Choose another one.',
  notWritten:
    'The book could not be written, so nothing was changed. Free some space on the disk, then try again.',
  resetTitle: 'Fetch the app anew',
  reset:
    'Removes the stored files of the app, not your records. The app is then fetched anew over the network.',
  resetAct: 'Remove the files of the app',
  resetAsk: 'Remove the stored files of the app? Your records stay. The network must be on to open it again.',
  resetDone: 'The files of the app are removed. Open the app while the network is on.',
  failed: (why: string) => `That did not work, and nothing was changed: ${why}`,
};
