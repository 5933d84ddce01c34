import { type Ways, whole } from '../format';

export const name = 'Rollwright';

export const skip = 'Skip to the work';

export const framed = 'Rollwright does not open inside another page. Open it in a tab of its own.';

export const rooms = {
  orders: 'Orders',
  film: 'Film',
  cut: 'Cut',
  press: 'Press',
  stock: 'Stock',
  log: 'Log',
  label: 'Rooms',
};

export const common = {
  cancel: 'Cancel',
  close: 'Close',
  save: 'Save',
  add: 'Add',
  remove: 'Remove',
  dismiss: 'Dismiss',
  yes: 'yes',
  no: 'no',
  more: (next: number, rest: number, ways: Ways) =>
    next === rest
      ? `Show ${whole(rest, ways)} more`
      : `Show ${whole(next, ways)} of ${whole(rest, ways)} more`,
};

export const kept = {
  saving: 'Keeping…',
  saved: (time: string) => `Kept on this device, ${time}`,
  failed: 'Not kept',
  offline: 'works offline',
  backup: (when: string) => `backup ${when}`,
  noBackup: 'no backup yet',
};

export const bands = {
  demo: 'This is a demo day with invented orders. Look around and try everything; your own orders are kept apart.',
  leaveDemo: 'Start with my own orders',
  backToDemo: 'Look at the demo day',
  follows: 'Rollwright is open in another tab, which does the writing. This one shows what happens there.',
  takeOver: 'Write here instead',
  readOnly:
    'Nothing was changed: another tab does the writing. “Write here instead” at the top takes it over.',
  update: 'A new version is ready.',
  updatedElsewhere:
    'A newer version runs in another tab. This one goes on as it is until you load it here too.',
  updateNow: 'Load it now',
  newer:
    'What is stored here was written by a newer version of Rollwright. It is left untouched. Reload the page to get that version.',
};
