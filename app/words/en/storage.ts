export const storage = {
  quota:
    'The disk is full, so the last changes are kept in memory only. Free some space and press “Try again” before you close this tab.',
  closed: 'The storage was closed from outside. The last changes are in memory only; press “Try again”.',
  unavailable: 'This browser no longer lets Rollwright keep anything. The last changes are in memory only.',
  blocked:
    'The storage does not answer, so the last changes are in memory only. Close other Rollwright tabs, then press “Try again”.',
  overtaken: 'Another tab writes now. What was changed here last may not be kept; look it over.',
  unknown: 'The last changes could not be kept. They are still in memory; press “Try again”.',
  whyInMemory: {
    unavailable: 'This browser does not let Rollwright keep anything, as in a private window.',
    blocked:
      'The storage of this browser does not answer. Close other Rollwright tabs, then press “Try again”.',
    unreadable:
      'What is stored here cannot be opened; it is left untouched. Restart the browser, then press “Try again”.',
  },
  inMemory:
    'You can work, but only in memory: all of it is gone when this tab is closed. Save a backup before that.',
  gone: 'Your own orders were kept in this browser, and its storage is empty now. It was cleared or damaged. Bring back a backup or a snapshot, or start anew.',
  bringBack: 'Look for what to bring back',
  startAnew: 'Start anew',
  meanwhile: 'Your stored orders are back. What you entered while nothing was kept is the first snapshot.',
  retry: 'Try again',
  opening: 'Opening your orders…',
};
