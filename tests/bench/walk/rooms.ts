import type { Page } from '@playwright/test';
import { boxesOf, copiesOf, filmOf, isPlaced, leftOf, stateOf, transfersOf } from './reckoning';
import type { Stored, StoredRun } from './stored';

/** Compares what a room shows with what the book says; gives a sentence for each difference. */
type Compare = (page: Page, stored: Stored) => Promise<string[]>;

const differs = (what: string, shown: unknown, reckoned: unknown): string[] =>
  shown === reckoned ? [] : [`${what}: shown ${JSON.stringify(shown)}, reckoned ${JSON.stringify(reckoned)}`];

const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;

const placedOf = (placed: number, all: number): string =>
  placed === all ? `all ${all} placed` : `${placed} of ${all} placed`;

/** Text with every blank the same, as the formats of figures use several. */
const plain = (text: string | null): string => (text ?? '').replaceAll(/\s+/g, ' ').trim();

/** Orders, their states, counts and how many of them are placed. */
const compareOrders: Compare = async (page, stored) => {
  if (stored.order.length === 0) return [];
  const seen = await page.evaluate(() => {
    const text = (element: Element | null) => element?.textContent ?? null;
    // What was typed and refused stays in its field, beside what the book has.
    const value = (element: Element | null) =>
      element instanceof HTMLInputElement && element.getAttribute('aria-invalid') !== 'true'
        ? element.value
        : null;
    let order: string | null = null;
    const heads = [];
    const rows = [];
    for (const line of document.querySelectorAll('.order-line')) {
      if (line.classList.contains('head-line')) {
        order = value(line.querySelector('.order-code input'));
        heads.push({
          code: order,
          name: value(line.querySelector('.order-name input')),
          state: text(line.querySelector('.state')),
        });
      } else if (line.classList.contains('transfer-line')) {
        rows.push({
          code: order,
          name: line.querySelector('section')?.getAttribute('aria-label') ?? null,
          count: value(line.querySelector('input[aria-label^="Qty"]')),
          placed: text(line.querySelector('span.placed')),
        });
      }
    }
    return { head: text(document.querySelector('.room-head p')), heads, rows };
  });
  const { order, transfer, copy } = stored;
  const summary = [
    counted(order.length, 'order'),
    counted(transfer.length, 'transfer'),
    copy.length === 1 ? '1 copy' : `${copy.length} copies`,
  ];
  return [
    ...differs('summary of the orders', plain(seen.head), summary.join(', ')),
    ...seen.heads.flatMap(({ code, name, state }) => {
      if (code === null || name === null) return [];
      const found = order.find((each) => each.code === code);
      if (!found) return [`order ${code} is shown and not in the book`];
      return [
        ...differs(`name of ${code}`, name, found.name),
        ...differs(`state of ${code}`, plain(state).replace(/^rush /, ''), stateOf(stored, found)),
      ];
    }),
    ...seen.rows.flatMap(({ code, name, count, placed }) => {
      if (code === null || count === null) return [];
      const id = order.find((each) => each.code === code)?.id ?? '';
      // Of two transfers with one name, each is compared with the other too: one of them must agree.
      const alike = transfersOf(stored, id).filter((each) => each.name === name);
      const reckoned = alike.map(({ id: own }) => {
        const all = copiesOf(stored, own);
        const ordered = all.filter(({ role }) => role === 'ordered').length;
        return `${ordered}, ${placedOf(all.filter(isPlaced).length, all.length)}`;
      });
      const shown = `${count}, ${plain(placed)}`;
      return reckoned.includes(shown)
        ? []
        : [`${code} ${name}: shown ${shown}, reckoned ${reckoned.join(' or ')}`];
    }),
  ];
};

const runNames = (runs: readonly StoredRun[]): readonly string[] =>
  runs.map(({ name, state }) => `${name} · ${state}`);

/** The runs to choose from, the sentence, what is left on the roll, and the orders' cards. */
const compareFilm: Compare = async (page, stored) => {
  const seen = await page.evaluate(() => {
    const text = (element: Element | null) => element?.textContent ?? null;
    const choice = document.querySelector<HTMLSelectElement>('.run-bar select');
    return {
      options: [...(choice?.options ?? [])].map((option) => option.textContent ?? ''),
      run: choice?.value ?? null,
      sentence: text(document.querySelector('[data-testid=sentence]')),
      left: text(document.querySelector('.run-facts p.quiet')),
      label: document.querySelector('.film-surface')?.getAttribute('aria-label') ?? null,
      cards: [...document.querySelectorAll('.cards > .card')].map((card) => ({
        name: text(card.querySelector('header strong')),
        counts: [...card.querySelectorAll('.card-row b')].map((each) => each.textContent ?? ''),
        told: text(card.querySelector(':scope > footer p, :scope > p')),
      })),
      nothingWaits: [...document.querySelectorAll('.notice p')].some((each) =>
        (each.textContent ?? '').startsWith('There is nothing to lay out'),
      ),
    };
  });
  if (seen.run === null) return [];
  const run = stored.run.find(({ id }) => id === seen.run);
  if (!run) return ['the run that is looked at is not in the book'];
  const shown = seen.options.slice(0, -1).toSorted();
  const listed = runNames(stored.run).filter((name) => shown.includes(name));
  const open = runNames(stored.run.filter(({ state }) => state === 'draft' || state === 'locked'));
  return [
    ...differs('runs listed', shown.join(), listed.toSorted().join()),
    ...open.filter((name) => !shown.includes(name)).map((name) => `${name} is open and not listed`),
    ...compareFigures(stored, run, plain(seen.sentence), plain(seen.left)),
    ...seen.cards.flatMap(({ name, counts, told }) => {
      const alike = stored.order.filter((each) => each.name === name && !each.archived);
      const reckoned = alike.map(({ id }) => {
        const own = transfersOf(stored, id).map((each) => copiesOf(stored, each.id));
        const all = own.flat();
        const waiting = all.filter(({ place }) => place === null).length;
        const sum = waiting > 0 ? `${waiting} wait for a place` : `all ${all.length} placed`;
        return `${own.map(({ length }) => length).join(' ')}: ${sum}`;
      });
      const card = `${counts.join(' ')}: ${plain(told)}`;
      return reckoned.includes(card)
        ? []
        : [`card of ${name}: shown ${card}, reckoned ${reckoned.join(' or ')}`];
    }),
  ];
};

/** Half of the last figure shown, in micrometres of a length told to the centimetre. */
const ROUNDED = 5_001;

/** The length and waste of the sentence and what it leaves, from where copies lie; of a roll that is not cut off in print. */
function compareFigures(stored: Stored, run: StoredRun, sentence: string, left: string): string[] {
  const film = filmOf(stored, run);
  const boxes = boxesOf(stored, run);
  if (film?.kind !== 'roll') return [];
  if (sentence === '') {
    return boxes.length === 0 ? [] : [`${run.name}: ${boxes.length} copies lie on it, and no sentence tells`];
  }
  const told = /^([\d.,]+) m of film, ([\d.]+)% of it waste/.exec(sentence);
  if (!told) return [`${run.name}: the sentence is not understood: ${sentence}`];
  const length = 1_000_000 * Number(told[1]?.replaceAll(',', ''));
  const ends = Math.max(0, ...boxes.map((box) => box.y + box.length)) + film.margins.tail;
  const covered = boxes.reduce((sum, box) => sum + box.width * box.length, 0);
  const waste = 100 * (1 - covered / (film.width * ends));
  const isWhole = run.printed === null;
  const over =
    isWhole && Math.abs(length - ends) > ROUNDED
      ? [`${run.name}: ${length} um told, copies end at ${ends}`]
      : [];
  const wasted =
    isWhole && over.length === 0 && Math.abs(Number(told[2]) - waste) > 0.051
      ? [`${run.name}: waste told ${told[2]}%, reckoned ${waste.toFixed(2)}%`]
      : [];
  const rest = /^([\d.,]+) m left on the roll after it/.exec(left)?.[1];
  const kept = run.state === 'draft' && rest ? 1_000_000 * Number(rest.replaceAll(',', '')) : null;
  const reckoned = Math.max(0, leftOf(stored, run.film) - ends);
  const after =
    kept !== null && isWhole && Math.abs(kept - reckoned) > ROUNDED
      ? [`${run.name}: ${kept} um left told, reckoned ${reckoned}`]
      : [];
  return [...over, ...wasted, ...after];
}

/** The state of the run, the act that leads on, and what of each order it does not bring. */
const comparePress: Compare = async (page, stored) => {
  const seen = await page.evaluate(() => {
    const text = (element: Element | null) => element?.textContent ?? null;
    const choice = document.querySelector<HTMLSelectElement>('.room-head select');
    return {
      run: choice?.value ?? null,
      state: text(document.querySelector('.states [aria-current] span')),
      acts: [...document.querySelectorAll('main button:not([disabled])')].map(
        (each) => each.textContent ?? '',
      ),
      unplanned: [...document.querySelectorAll('.done-by .care.small')].map((each) => each.textContent ?? ''),
      orders: [...document.querySelectorAll('main table')].flatMap((table) => {
        const heads = [...table.querySelectorAll('thead th')].map((head) => head.textContent ?? '');
        const done = heads.indexOf('done');
        return heads[0]?.startsWith('Orders')
          ? [...table.querySelectorAll('tbody tr')].map(({ children: [name, ...cells] }) => ({
              name: text(name ?? null) ?? '',
              done: text(cells[done - 1] ?? null) ?? '',
            }))
          : [];
      }),
    };
  });
  if (seen.state === null) return [];
  const run =
    seen.run === null && stored.run.length === 1
      ? stored.run[0]
      : stored.run.find(({ id }) => id === seen.run);
  // The room says "locked for print".
  const [state = ''] = plain(seen.state).split(' ');
  const leads = {
    draft: 'To the Film room',
    locked: 'All printed',
    printed: 'All cured',
    cured: 'All pressed',
    pressed: 'Close the run',
    closed: 'To the log',
  };
  const unplanned = new Set<string | null>(
    stored.run
      .filter(({ name }) =>
        seen.unplanned.some((told) => plain(told).startsWith(`${name} is not in this plan`)),
      )
      .map(({ id }) => id),
  );
  const lead = Object.entries(leads).find(([name]) => name === state)?.[1];
  return [
    ...(run ? differs('state of the run', state, run.state) : []),
    ...(lead !== undefined && !seen.acts.includes(lead)
      ? [`a run that is ${state} shows no button "${lead}"`]
      : []),
    ...(run
      ? seen.orders.flatMap(({ name, done }) => {
          // A locked run goes on calling its orders what they were called then.
          const called = run.snapshot ? [...run.snapshot.orders, ...stored.order] : stored.order;
          const alike = called.filter(
            (order) =>
              plain(name).startsWith(`${order.code} ${order.name}`) ||
              plain(name) === `${order.code}${order.name}`,
          );
          const missing = alike.map((order) => {
            const own = transfersOf(stored, order.id)
              .flatMap(({ id }) => copiesOf(stored, id))
              .filter(({ role }) => role === 'ordered');
            return own.filter(
              (copy) => copy.state === 'waiting' || (copy.state === 'placed' && unplanned.has(copy.run)),
            ).length;
          });
          const told = [...plain(done).matchAll(/(\d+) cop(?:y|ies)/g)].reduce(
            (sum, [, count]) => sum + Number(count),
            0,
          );
          return alike.length > 0 && !missing.includes(told)
            ? [`${name} in Press: ${told} told as missing (${done}), reckoned ${missing.join(' or ')}`]
            : [];
        })
      : []),
  ];
};

/** What there is of each film, by the sum of its entries. */
const compareStock: Compare = async (page, stored) => {
  const seen = await page.evaluate(() =>
    [
      ...document.querySelectorAll(
        'table[aria-label="Film"] tbody tr, section[aria-labelledby] table tbody tr',
      ),
    ].map((row) => ({
      name: row.querySelector('th')?.textContent ?? '',
      present: row.querySelector('td')?.textContent ?? '',
    })),
  );
  return stored.film.flatMap((film) => {
    const row = seen.find(({ name }) => plain(name) === film.name);
    if (!row || film.kind !== 'roll') return [];
    const told = /^(−?[\d.,]+) m/.exec(plain(row.present))?.[1];
    if (told === undefined) return [`${film.name}: ${row.present} is not understood`];
    const length = 1_000_000 * Number(told.replaceAll(',', '').replace('−', '-'));
    return Math.abs(length - leftOf(stored, film.id)) > ROUNDED
      ? [`${film.name}: ${row.present} told, entries sum to ${leftOf(stored, film.id)} um`]
      : [];
  });
};

/** The pile of the whole run cannot hold more than lies on it. */
const compareCut: Compare = async (page, stored) => {
  const piles = await page.locator('.pile li').allTextContents();
  return piles.flatMap((pile) =>
    [...plain(pile).matchAll(/([A-Z0-9]+): (\d+) of (\d+)$/g)].flatMap(([, code, cut, of]) => {
      const order = stored.order.find((each) => each.code === code);
      const most = order
        ? transfersOf(stored, order.id).flatMap(({ id }) => copiesOf(stored, id)).length
        : Number.POSITIVE_INFINITY;
      return Number(cut) > Number(of) || Number(of) > most
        ? [`pile of ${code}: ${cut} of ${of}, of ${most} in the book`]
        : [];
    }),
  );
};

/** How many runs are closed. */
const compareLog: Compare = async (page, stored) => {
  const head = page.locator('.room-head p');
  const told = (await head.count()) > 0 ? plain(await head.first().textContent()) : '0 closed runs';
  return differs('head of the log', told, counted(stored.closing.length, 'closed run'));
};

export const rooms = {
  Orders: compareOrders,
  Film: compareFilm,
  Cut: compareCut,
  Press: comparePress,
  Stock: compareStock,
  Log: compareLog,
} as const satisfies Record<string, Compare>;

export type Room = keyof typeof rooms;
