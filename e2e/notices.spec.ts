import { expect, layOut, lockRun, notices, openShop, pasteTable, test } from './shop';

const fairs = Array.from({ length: 9 }, (_, at) => `Fair ${at + 1},front,95,60,2,2027-01-08,yes`);

test('what a notice lies over can be scrolled clear of it, on a desktop and a phone', async ({ page }) => {
  await openShop(page);
  await pasteTable(page, fairs.join('\n'));
  await layOut(page);
  await lockRun(page);
  for (const [width, height] of [
    [1440, 900],
    [390, 844],
  ] as const) {
    await page.setViewportSize({ width, height });
    await expect(notices(page)).toContainText('Without artwork');

    const { height: told, covered } = await page.evaluate(() => {
      window.scrollTo({ top: document.documentElement.scrollHeight, behavior: 'instant' });
      const news = document.querySelector('.notices')?.getBoundingClientRect();
      const [from, to] = [news?.top ?? 0, news?.bottom ?? 0];
      // What stays at the foot of the page stands below the news.
      const under = [...document.querySelectorAll('main button, main .card')].filter((each) => {
        const { top, bottom } = each.getBoundingClientRect();
        return bottom > from && top < to;
      });
      return { height: news?.height ?? 0, covered: under.map((each) => each.textContent) };
    });
    expect(told, `${width} wide`).toBeGreaterThan(40);
    expect(covered, `${width} wide`).toEqual([]);
  }
});
