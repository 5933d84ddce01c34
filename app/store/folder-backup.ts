import { dailyName, surplus } from '../../src/output/backup';
import { type BackupFolder, backupFolder, forgetFolder, rememberFolder } from '../../src/storage';
import { askForFolder, type Permitted } from '../files/pickers';
import { handOutBackup } from './backup';
import { type ShownFolder, useFolder } from './folder';
import { mayWrite, useShop } from './shop';
import { today } from './today';

/** At most one backup is written in so long, in milliseconds. */
const HOUR = 3_600_000;

let chosen: BackupFolder | null = null;
/** When a backup was tried last: one that fails is not tried again at once. */
let tried = 0;
let isWriting = false;

const show = (state: ShownFolder['state']): void =>
  useFolder.setState({ folder: chosen && { name: chosen.handle.name, at: chosen.at, state } });

/** Lets go of the backups of days long gone. */
async function sweep(handle: FileSystemDirectoryHandle): Promise<void> {
  const names: string[] = [];
  for await (const name of handle.keys()) names.push(name);
  for (const name of surplus(names)) await handle.removeEntry(name);
}

/** Writes the backup of the day, in place of the one that was written earlier that day. */
async function write(): Promise<void> {
  if (!chosen || isWriting) return;
  isWriting = true;
  tried = Date.now();
  const { handle } = chosen;
  try {
    const saved = await handOutBackup(await handle.getFileHandle(dailyName(today()), { create: true }));
    if (chosen?.handle !== handle) return;
    if (saved.ok) {
      chosen = { handle, at: Date.now() };
      await rememberFolder(chosen);
      await sweep(handle);
    }
    show(saved.ok ? 'ready' : 'failed');
  } catch {
    // The folder is gone, the disk is full, or the browser has changed its mind.
    if (chosen?.handle === handle) show('failed');
  } finally {
    isWriting = false;
  }
}

/** Only the shop's own book goes there, from the tab that writes it. */
const isShopOpen = (): boolean => useShop.getState().source === 'shop' && mayWrite();

/** Whether the browser lets files be written there without asking; where it cannot tell, that is found out by writing. */
async function mayBeWritten(handle: FileSystemDirectoryHandle & Permitted): Promise<boolean> {
  return ((await handle.queryPermission?.({ mode: 'readwrite' })) ?? 'granted') === 'granted';
}

/** Writes backups to the folder that was chosen, in each hour in which something was changed, as long as the page lives. */
export async function followFolder(): Promise<void> {
  chosen = await backupFolder();
  if (chosen) show((await mayBeWritten(chosen.handle)) ? 'ready' : 'waits');
  useShop.subscribe(({ saving }, before) => {
    if (saving === before.saving || saving.kind !== 'saved' || !isShopOpen()) return;
    const isDue = Date.now() - Math.max(tried, chosen?.at ?? 0) >= HOUR;
    if (isDue && useFolder.getState().folder?.state !== 'waits') void write();
  });
}

/** Asks for a folder, and writes the first backup to it. To be called as soon as a button is pressed. */
export async function chooseFolder(): Promise<void> {
  const handle = await askForFolder();
  if (!handle) return;
  chosen = { handle, at: null };
  await rememberFolder(chosen);
  show('ready');
  if (isShopOpen()) await write();
}

/** Asks the browser to allow the folder once more, or tries it again. To be called as soon as a button is pressed. */
export async function allowFolder(): Promise<void> {
  const handle: (FileSystemDirectoryHandle & Permitted) | undefined = chosen?.handle;
  if (!handle) return;
  const answer = (await handle.requestPermission?.({ mode: 'readwrite' })) ?? 'granted';
  if (answer !== 'granted') return show('waits');
  show('ready');
  if (isShopOpen()) await write();
}

/** Backups go there no longer; those that are there stay. */
export async function leaveFolder(): Promise<void> {
  chosen = null;
  useFolder.setState({ folder: null });
  await forgetFolder();
}
