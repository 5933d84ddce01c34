import './recovery.css';
import { recovery as en } from '../words/en/recovery';
import { recovery as es } from '../words/es/recovery';
import { rawRecords } from './raw-records';
import { removeFiles } from './reset';
import { bringBack, type Listed, listSnapshots } from './snapshots';

const language = navigator.languages
  .map((tag) => tag.slice(0, 2))
  .find((tag) => tag === 'en' || tag === 'es');
const words = language === 'es' ? es : en;

const told = document.getElementById('told');

const say = (text: string): void => {
  if (told) told.textContent = text;
};

function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  text: string,
  attributes: Readonly<Record<string, string>> = {},
): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag);
  made.textContent = text;
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  return made;
}

/** A button that does one thing at a time, and says so if it fails. */
function button(label: string, act: () => Promise<void>, attributes: Readonly<Record<string, string>> = {}) {
  const made = element('button', label, { type: 'button', ...attributes });
  made.addEventListener('click', () => {
    made.disabled = true;
    void act()
      .catch((error) => say(words.failed(String(error))))
      .finally(() => {
        made.disabled = false;
      });
  });
  return made;
}

const section = (title: string, sentence: string, ...content: readonly HTMLElement[]): HTMLElement => {
  const made = element('section', '');
  made.append(element('h2', title), element('p', sentence), ...content);
  return made;
};

async function save(): Promise<void> {
  say(words.copyWorking);
  const now = new Date();
  const { file, records, unread } = await rawRecords(now);
  if (records + unread === 0) return say(words.nothing);
  const address = URL.createObjectURL(file);
  element('a', '', { href: address, download: words.copyFile(now.toJSON().slice(0, 10)) }).click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
  say(words.copyDone(String(records), String(unread)));
}

const list = element('ul', '');

const dayAndTime = (at: string): string => {
  const date = new Date(at);
  return Number.isNaN(date.getTime()) ? at : date.toLocaleString(navigator.languages[0]);
};

async function bring(at: string): Promise<void> {
  const when = dayAndTime(at);
  if (!confirm(words.bringAsk(when))) return;
  const outcome = await bringBack(at, new Date());
  say(
    {
      done: words.broughtBack(when),
      writes: words.writes,
      damaged: words.damaged,
      'not-written': words.notWritten,
    }[outcome],
  );
  await show();
}

function line({ at, holds }: Listed): HTMLElement {
  const when = dayAndTime(at);
  const made = element('li', '');
  made.append(
    element(
      'span',
      `${when}: ${holds ? words.held(String(holds.orders), String(holds.copies)) : words.unreadable}`,
    ),
  );
  if (holds) made.append(button(words.bring, () => bring(at), { 'aria-label': words.bringNamed(when) }));
  return made;
}

async function show(): Promise<void> {
  const snapshots = await listSnapshots();
  list.replaceChildren(...(snapshots.length > 0 ? snapshots.map(line) : [element('li', words.none)]));
}

async function reset(): Promise<void> {
  if (!confirm(words.resetAsk)) return;
  await removeFiles();
  say(words.resetDone);
}

document.documentElement.lang = words === es ? 'es' : 'en';
document.title = words.title;
document
  .getElementById('recovery')
  ?.replaceChildren(
    element('h1', words.title),
    element('p', words.lead),
    section(words.copyTitle, words.copy, button(words.copyAct, save)),
    section(words.snapshotsTitle, words.snapshots, list),
    section(words.resetTitle, words.reset, button(words.resetAct, reset)),
    element('a', words.open, { href: './' }),
  );
void show().catch((error) => say(words.failed(String(error))));
