import type { Locator, Page } from '@playwright/test';
import type { Room } from './rooms';

/** What draws of a walk come from. */
export interface Chance {
  /** A whole number from 0 up to, and without, a bound. */
  readonly below: (bound: number) => number;
  readonly of: <Item>(items: readonly [Item, ...Item[]]) => Item;
}

/** One of the app's own acts, as a person does it. */
export interface Act {
  readonly name: string;
  readonly room: Room;
  /** How often it is drawn, beside the others. */
  readonly weight: number;
  /** Does it, and tells what was done; `null` where the room has nothing to do it to. */
  readonly act: (page: Page, chance: Chance) => Promise<string | null>;
}

/** One of what a locator finds, drawn; `null` where it finds nothing. */
async function drawn(found: Locator, chance: Chance): Promise<Locator | null> {
  const count = await found.count();
  return count === 0 ? null : found.nth(chance.below(count));
}

const nameOf = async (control: Locator): Promise<string> =>
  (await control.getAttribute('aria-label')) ?? (await control.textContent()) ?? '';

/**
 * Does something with a control that was drawn; `null` if it is gone meanwhile, as by what is found in the background or by lines out of
 * view, or lies behind a window that the act before asked for and that came late.
 */
async function onlyIfThere(
  control: Locator | null,
  does: (control: Locator) => Promise<string>,
): Promise<string | null> {
  if (!control) return null;
  try {
    return await does(control);
  } catch (error) {
    const isBehind = (await control.page().getByRole('dialog').count()) > 0;
    if (isBehind || (await control.count()) === 0) return null;
    throw error;
  }
}

/** Presses one of the buttons of a name that can be pressed. */
const pressing =
  (name: RegExp): Act['act'] =>
  async (page, chance) =>
    onlyIfThere(
      await drawn(page.getByRole('main').getByRole('button', { name, disabled: false }), chance),
      async (button) => {
        const told = await nameOf(button);
        await button.click();
        return told;
      },
    );

/** Presses a button that begins to look for a layout, and ends it soon: some of what is found is taken. */
const looking =
  (name: RegExp): Act['act'] =>
  async (page, chance) => {
    const done = await pressing(name)(page, chance);
    if (done === null) return null;
    const stop = page.getByRole('button', { name: 'Stop' });
    await page.waitForTimeout(300);
    await stop.evaluateAll((all) => {
      for (const each of all) if (each instanceof HTMLElement) each.click();
    });
    await stop.waitFor({ state: 'hidden' });
    return done;
  };

/** Types over one of the fields of a name. */
const typing =
  (name: RegExp, text: (chance: Chance) => string): Act['act'] =>
  async (page, chance) =>
    onlyIfThere(await drawn(page.getByRole('main').getByRole('textbox', { name }), chance), async (field) => {
      const typed = text(chance);
      const told = await nameOf(field);
      await field.fill(typed);
      await field.press('Enter');
      await field.blur();
      return `${told} := ${typed}`;
    });

/** Chooses one of a few. */
const choosing =
  (name: RegExp): Act['act'] =>
  async (page, chance) =>
    onlyIfThere(
      await drawn(page.getByRole('main').getByRole('combobox', { name, disabled: false }), chance),
      async (list) => {
        const options = await list.locator('option').allTextContents();
        const [told, option] = [await nameOf(list), options[chance.below(options.length)] ?? ''];
        await list.selectOption(option);
        return `${told} := ${option}`;
      },
    );

/** Presses a key while the film has the focus. */
const key =
  (...keys: readonly string[]): Act['act'] =>
  async (page) => {
    const film = page.locator('.film-surface');
    if ((await film.count()) === 0) return null;
    await film.focus();
    for (const each of keys) await page.keyboard.press(each);
    return keys.join(' ');
  };

/** Locks the run, whatever it is pressed on. */
const lock: Act['act'] = async (page, chance) => {
  const pressed = await pressing(/^Lock for print$/)(page, chance);
  if (pressed === null) return null;
  const asked = page.getByRole('dialog', { name: 'What is it pressed on?' });
  await asked
    .or(page.getByRole('button', { name: 'Back to draft' }))
    .first()
    .waitFor();
  if (await asked.isHidden()) return pressed;
  const fabric = chance.of(['cotton', 'polyester', 'nylon', 'other']);
  await asked.getByLabel('For all lines').selectOption(fabric);
  await asked.getByRole('button', { name: 'Lock for print' }).click();
  return `${pressed} on ${fabric}`;
};

/** Opens a window by a button, fills its fields, and presses the button that does it; closes what stays open since it was refused. */
const inWindow =
  (opens: RegExp, fill: (window: Locator, chance: Chance) => Promise<string>, does: RegExp): Act['act'] =>
  async (page, chance) => {
    if ((await pressing(opens)(page, chance)) === null) return null;
    const window = page.getByRole('dialog');
    await window.waitFor();
    const told = await fill(window, chance);
    const button = window.getByRole('button', { name: does, disabled: false }).first();
    if ((await button.count()) > 0) await button.click();
    if ((await window.count()) > 0) await page.keyboard.press('Escape');
    // What was typed and not taken is asked about before it is thrown away.
    const discard = page
      .getByRole('dialog')
      .getByRole('button', { name: /Leave|Discard|Close|Cancel/ })
      .first();
    if ((await page.getByRole('dialog').count()) > 0 && (await discard.count()) > 0) await discard.click();
    return told;
  };

/** Fills a text field of a window, if it has it. */
async function into(window: Locator, name: RegExp, text: string): Promise<string> {
  const field = window.getByRole('textbox', { name }).first();
  if ((await field.count()) === 0) return '';
  await field.fill(text);
  return `${name.source} := ${text}; `;
}

const NAMES = [
  'Oak Lane FC',
  'Pebble Cafe',
  'Mill Fair',
  'Larkfield Choir',
  '#1041',
  '#1042',
  'Tram 9 Bakery',
] as const;
const DESIGNS = ['crest', 'back', 'sleeve', 'badge', 'tag'] as const;

/** A table of one to three rows, as a shop's export might hold. */
function table({ below, of }: Chance): string {
  const rows = Array.from({ length: 1 + below(3) }, () =>
    [
      of(NAMES),
      of(DESIGNS),
      30 + 10 * below(20),
      30 + 10 * below(20),
      1 + below(6),
      of(['', '2026-12-04', '2027-01-08']),
      of(['yes', 'no']),
    ].join(),
  );
  return ['order,transfer,width,height,count,due,may turn', ...rows].join('\n');
}

/** A day of the trade, taken apart into what one press or one window does. */
export const acts: readonly Act[] = [
  {
    name: 'paste a table',
    room: 'Orders',
    weight: 8,
    act: (page, chance) =>
      inWindow(
        /^Paste a table$/,
        async (window, drawing) => {
          const text = table(drawing);
          await window.getByRole('textbox', { name: 'Table' }).fill(text);
          // It is read in a worker.
          await window
            .getByText(/understood|to mend/)
            .first()
            .waitFor();
          // What is there already is asked about.
          const all = window.getByRole('button', {
            name: drawing.of(['Skip all', 'Replace all', 'Add all']),
            disabled: false,
          });
          if ((await all.count()) > 0) await all.click();
          return text.replaceAll('\n', ' / ');
        },
        /^(Add|Replace) \d|^Leave all/,
      )(page, chance),
  },
  { name: 'add an order', room: 'Orders', weight: 1, act: pressing(/^Add an order$/) },
  { name: 'rename an order', room: 'Orders', weight: 1, act: typing(/^Order$/, ({ of }) => of(NAMES)) },
  {
    name: 'change a code',
    room: 'Orders',
    weight: 1,
    act: typing(/^Code$/, ({ of }) => of(['AB', 'Q', 'ZZZ', 'A1', 'MF'])),
  },
  {
    name: 'change a count',
    room: 'Orders',
    weight: 5,
    act: typing(/^Qty: /, ({ below }) => String(below(9))),
  },
  {
    name: 'change a width',
    room: 'Orders',
    weight: 3,
    act: typing(/^Width: /, ({ of }) => of(['60', '120 mm', '4 in', '330', 'abc'])),
  },
  { name: 'let a transfer turn', room: 'Orders', weight: 2, act: choosing(/^May turn: /) },
  { name: 'remove a transfer', room: 'Orders', weight: 1, act: pressing(/^Remove (?!order)/) },
  { name: 'remove an order', room: 'Orders', weight: 1, act: pressing(/^Remove order /) },
  { name: 'order again', room: 'Orders', weight: 1, act: pressing(/^Repeat order /) },
  {
    name: 'archive',
    room: 'Orders',
    weight: 2,
    async act(page, chance) {
      const told = await pressing(/^(Archive|Bring .* back)/)(page, chance);
      if (!told?.startsWith('Archive')) return told;
      // What is not done is asked about, in a window that may be on its way; what is done is gone.
      const sure = page.getByRole('dialog').getByRole('button', { name: 'Archive' });
      const pressed = page.getByRole('button', { name: told, exact: true });
      for (let tries = 0; tries < 100 && (await sure.count()) === 0; tries += 1) {
        if ((await pressed.count()) === 0) return told;
        await page.waitForTimeout(100);
      }
      if ((await sure.count()) > 0) await sure.click();
      return told;
    },
  },
  { name: 'print an order first', room: 'Film', weight: 3, act: pressing(/^Print .* first$/) },
  {
    name: 'wait for a proof, or no longer',
    room: 'Orders',
    weight: 2,
    act: inWindow(
      /^Details$/,
      async (window) => {
        await window.getByRole('checkbox', { name: /proof/ }).click({ force: true });
        return 'proof';
      },
      /^Save$/,
    ),
  },
  {
    name: 'say that it is rush',
    room: 'Orders',
    weight: 2,
    act: inWindow(
      /^Details$/,
      async (window) => {
        await window.getByRole('checkbox', { name: 'Rush' }).click({ force: true });
        return 'rush';
      },
      /^Save$/,
    ),
  },
  {
    name: 'make overs',
    room: 'Orders',
    weight: 1,
    act: inWindow(
      /^More about /,
      async (window, { below }) => into(window, /^Overs/, String(below(3))),
      /^(Save|Close)$/,
    ),
  },
  { name: 'lay out', room: 'Film', weight: 12, act: looking(/^Lay out$/) },
  { name: 'place what waits', room: 'Film', weight: 4, act: looking(/^Place waiting copies$/) },
  { name: 'put one on the film', room: 'Film', weight: 4, act: pressing(/^Put one /) },
  { name: 'take a copy off', room: 'Film', weight: 3, act: key('n', 'Delete') },
  { name: 'turn a copy', room: 'Film', weight: 2, act: key('n', 'n', 'r') },
  { name: 'pin a copy', room: 'Film', weight: 2, act: key('n', 'p') },
  { name: 'move a copy', room: 'Film', weight: 3, act: key('n', 'Shift+ArrowRight', 'Shift+ArrowRight') },
  { name: 'undo', room: 'Film', weight: 5, act: pressing(/^Undo$/) },
  { name: 'redo', room: 'Film', weight: 2, act: pressing(/^Redo$/) },
  { name: 'undo an order’s change', room: 'Orders', weight: 3, act: pressing(/^Undo$/) },
  { name: 'lock', room: 'Film', weight: 5, act: lock },
  { name: 'back to draft', room: 'Film', weight: 2, act: pressing(/^(Back to draft|Step back to locked)$/) },
  { name: 'all printed', room: 'Film', weight: 3, act: pressing(/^All printed$/) },
  {
    name: 'printed to',
    room: 'Film',
    weight: 2,
    act: inWindow(
      /^Printed to …$/,
      (window, { of }) => into(window, /^Printed/, of(['50', '150', '400', '2000'])),
      /^Save$/,
    ),
  },
  {
    name: 'spoiled from – to',
    room: 'Film',
    weight: 2,
    act: inWindow(
      /^Spoiled from/,
      async (window, { of }) =>
        (await into(window, /^From/, of(['0', '60', '200']))) +
        (await into(window, /^To/, of(['50', '120', '390']))),
      /^Put them back/,
    ),
  },
  {
    name: 'another run',
    room: 'Film',
    weight: 3,
    async act(page, chance) {
      const choice = page.getByRole('combobox', { name: 'Run', exact: true });
      if ((await choice.count()) === 0) return null;
      const options = await choice
        .locator('option')
        .evaluateAll((all) => all.map((each) => (each instanceof HTMLOptionElement ? each.value : '')));
      const value = options[chance.below(options.length)] ?? '';
      await choice.selectOption(value);
      const window = page.getByRole('dialog');
      if (value !== 'new') return `run ${value}`;
      await window.waitFor();
      for (const box of await window.getByRole('checkbox').all())
        if (chance.below(2) === 0) await box.click({ force: true });
      await page.keyboard.press('Escape');
      return 'a new run';
    },
  },
  {
    name: 'choose copies',
    room: 'Film',
    weight: 2,
    act: inWindow(
      /^Choose copies$/,
      async (window, chance) => {
        await window.getByRole('combobox', { name: 'Include' }).selectOption(chance.of(['all', 'chosen']));
        const box = await drawn(window.getByRole('checkbox'), chance);
        await box?.click({ force: true });
        return 'takes';
      },
      /^Close$/,
    ),
  },
  {
    name: 'remove a run',
    room: 'Film',
    weight: 1,
    act: inWindow(/^Choose copies$/, async () => 'removed, if another is left', /^Remove this run$/),
  },
  {
    name: 'another gap',
    room: 'Film',
    weight: 1,
    act: inWindow(
      /^Film and price$/,
      async (window, { of }) => {
        await window.getByText('Cutting', { exact: true }).click();
        return into(window, /^Gap/, of(['3', '5', '8']));
      },
      /^Save$/,
    ),
  },
  { name: 'cut on', room: 'Cut', weight: 4, act: pressing(/^(Done, next|Next span|One back)$/) },
  {
    name: 'cut a whole span',
    room: 'Cut',
    weight: 3,
    act: pressing(/^(This whole span is cut|Not cut after all)$/),
  },
  {
    name: 'spoil a copy',
    room: 'Press',
    weight: 3,
    act: inWindow(
      /^A copy is spoiled$/,
      async (window) => {
        const before = window.getByRole('combobox', { name: 'Why' });
        if ((await before.count()) > 0) return 'as before';
        return into(window, /^(Why|Another reason)/, 'crooked');
      },
      /^Reprint$/,
    ),
  },
  { name: 'begin the run', room: 'Press', weight: 3, act: pressing(/^Begin the run$/) },
  {
    name: 'tick a job',
    room: 'Press',
    weight: 8,
    async act(page, chance) {
      // The day is planned anew behind the list, which is another one then.
      const jobs = page.locator('.job-list input:not([disabled])');
      return onlyIfThere(await drawn(jobs, chance), async (job) => {
        await job.click({ timeout: 5_000 });
        return 'a job';
      });
    },
  },
  { name: 'untick a job', room: 'Press', weight: 2, act: pressing(/^Untick: /) },
  {
    name: 'lead the run on',
    room: 'Press',
    weight: 6,
    act: pressing(/^(All printed|All cured|All pressed)$/),
  },
  { name: 'step the run back', room: 'Press', weight: 2, act: pressing(/^Back to /) },
  {
    name: 'close the run',
    room: 'Press',
    weight: 4,
    act: inWindow(/^Close the run$/, async () => 'closed', /^Close the run$/),
  },
  {
    name: 'another run at the press',
    room: 'Press',
    weight: 2,
    async act(page, chance) {
      const choice = page.locator('.room-head select').first();
      if ((await choice.count()) === 0) return null;
      const options = await choice
        .locator('option')
        .evaluateAll((all) => all.map((each) => (each instanceof HTMLOptionElement ? each.value : '')));
      await choice.selectOption(options[chance.below(options.length)] ?? '');
      return 'another run';
    },
  },
  {
    name: 'count a roll',
    room: 'Stock',
    weight: 2,
    act: inWindow(
      /^Open /,
      async (window, { of }) => {
        await window.getByRole('combobox', { name: 'What happened' }).selectOption(of(['counted', 'bought']));
        return into(window, /^Length/, of(['1', '3', '20', '40']));
      },
      /^Enter it$/,
    ),
  },
  { name: 'undo an entry', room: 'Stock', weight: 1, act: pressing(/^Undo: /) },
  { name: 'look at the log', room: 'Log', weight: 1, act: async () => 'looked' },
];
