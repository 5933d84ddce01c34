import type { BundleProblem } from '../../../src/output/backup';
import type { SnapshotReason } from '../../../src/storage';
import { counted, type Ways } from '../format';
import { copies, orders } from './counts';
import { keep as first } from './first-keep';

const tooMuch = {
  book: 'a book of over 100 MB',
  image: 'an image of over 200 MB',
  total: 'over 4 GB in all',
  images: 'over 20,000 images',
  ratio: 'a part that unpacks to over 200 times its size',
  text: 'a text of over a million characters',
};

const reasons: Readonly<Record<SnapshotReason, string>> = {
  hour: 'of the hour',
  day: 'opening of the day',
  'before-restoring': 'before something was brought back',
  'before-migrating': 'before a newer version took over',
};

export const keep = {
  ...first,
  title: 'Storage and backup',
  backups: 'Backup',
  never:
    'No backup has been saved yet. A backup is one file with all orders, runs and artwork; keep it on another device.',
  last: (when: string) => `The last backup was saved on ${when}.`,
  restore: 'Bring a backup back',
  restoreHint:
    'The whole file is checked before anything here is touched, and what is here is kept as a snapshot.',
  restored: (count: number, ways: Ways) =>
    `${counted(count, 'order is', 'orders are', ways)} back. What was here before is the first snapshot.`,
  unverified:
    'This backup is of an earlier version and has no list of its images. Look whether all are there.',
  leftOut: (images: readonly string[]) =>
    `These images are not in the backup, since their files are missing, altered or too large: ${images.join(', ')}.`,
  differs:
    'What was written is not what was to be saved. Do not keep that file; save the backup somewhere else.',
  problems: (problem: BundleProblem | { readonly code: 'not-kept' }): string => {
    switch (problem.code) {
      case 'not-backup':
        return 'This file is not a backup of Rollwright. Nothing here was changed.';
      case 'damaged':
        return 'This backup is damaged: a part of it is missing or was changed. Nothing here was changed.';
      case 'newer':
        return 'This backup was made by a newer version of Rollwright. Reload the page to get that version, then try again.';
      case 'part-missing':
        return 'This backup is of an older version, and the part that reads it could not be fetched. Nothing here was changed; reload the page with the network on, then try again.';
      case 'too-much':
        return `This backup holds ${tooMuch[problem.of]}, more than any shop needs. Nothing here was changed; choose another file.`;
      case 'not-kept':
        return 'The backup could not be stored here, perhaps since the disk is full or another tab writes. Nothing here was changed.';
    }
  },
  folder: {
    title: 'Backups by themselves',
    none: 'Choose a folder, best on another disk: a backup goes there in each hour of work. A file a day, of which thirty are kept.',
    choose: 'Choose a folder',
    another: 'Another folder',
    leave: 'No longer',
    chosen: (name: string) =>
      `Backups go to the folder “${name}” in each hour of work. A file a day, of which thirty are kept.`,
    last: (when: string) => `The last was written on ${when}.`,
    waits: (name: string) => `Backups to the folder “${name}” wait until you allow them again.`,
    allow: 'Allow',
    failed: (name: string) =>
      `The backup to the folder “${name}” could not be written. Look whether the folder is there and has room.`,
    cannot: 'This browser cannot write to a folder by itself. Save a backup at the end of each day.',
    refused: 'The browser does not let this folder be used. Choose another.',
  },
  snapshots: 'Snapshots',
  noSnapshots:
    'A snapshot is taken in each hour of work. They are kept for a day, and one a day for a month.',
  snapshot: (why: SnapshotReason, orderCount: number, copyCount: number, ways: Ways) =>
    `${reasons[why]}: ${orders(orderCount, ways)}, ${copies(copyCount, ways)}`,
  unreadableSnapshot: 'cannot be read; it was left as it is',
  snapshotProblems: {
    gone: (when: string) => `The snapshot of ${when} is no longer there. Nothing here was changed.`,
    damaged: (when: string) =>
      `The snapshot of ${when} cannot be read whole. It was left as it is, and nothing here was changed.`,
    newer: (when: string) =>
      `The snapshot of ${when} was taken by a newer version of Rollwright. Reload the page, then try again.`,
    'part-missing': (when: string) =>
      `The snapshot of ${when} is of an older version, and the part that reads it could not be fetched. Nothing here was changed; reload the page with the network on, then try again.`,
    'not-kept': (when: string) =>
      `The snapshot of ${when} could not be brought back: the disk is full or another tab writes. Nothing here was changed.`,
  },
  bringBack: 'Bring back',
  bringBackNamed: (when: string) => `Bring back ${when}`,
  broughtBack: 'That is how it was. What was here before is the first snapshot.',
  durable: 'Against clearing',
  isDurable: 'The browser keeps this data even when the disk is nearly full.',
  mayBeCleared: 'A browser may clear stored data when the disk is nearly full.',
  ask: 'Ask the browser to keep it',
  notDurable: 'The browser did not agree. Install the app or bookmark it and ask again, and save backups.',
};
