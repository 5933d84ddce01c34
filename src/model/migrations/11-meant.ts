import { each, isNoStep, isObject, type Migration } from './stored';

const forTransfer = { meant: [] };

/** Up to version 10 every finding about artwork stood. From version 11 on a shop can call one meant. */
export const callFindingsMeant: Migration = (records) =>
  new Map(
    [...records].filter(isNoStep).map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('transfer/')) return [key, { ...forTransfer, ...value }];
      if (!key.startsWith('run/') || !isObject(value.snapshot)) return [key, value];
      const { snapshot } = value;
      return [key, { ...value, snapshot: { ...snapshot, transfers: each(snapshot.transfers, forTransfer) } }];
    }),
  );
