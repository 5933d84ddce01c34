import { expectAccessible } from './accessible';
import { expect, filmSurface, kept, layOut, openShop, pasteTable, sentence, test } from './shop';
import { speak } from './speak';
import { stopSearch } from './stop-search';

const TABLE = `order,transfer,width,height,count,due,may turn
Harbour Rowing,Crest left chest,89,89,3,2026-12-01,yes
Corner Oven,Badge,140.5,140,2,,yes`;

test('Spanish is chosen in the middle of work, holds at once and after a reload, and English comes back', async ({
  page,
}) => {
  const check = (where: string) => expectAccessible(page, where);
  await openShop(page);
  await pasteTable(page, TABLE);
  await layOut(page);
  await page.getByText('Copies as a table').click();
  await page.locator('.copy-table tbody button').first().click();
  const html = page.locator('html');
  await expect(html).toHaveAttribute('lang', 'en');

  await speak(page, 'Shop', 'Units and language', 'Español');
  const dialog = page.getByRole('dialog', { name: 'Unidades e idioma' });
  await expect(dialog).toBeVisible();
  await expect(html).toHaveAttribute('lang', 'es');
  // A currency is told by its code and its Spanish name; prices keep their figures, and it is said before.
  await expect(dialog.getByLabel('Moneda')).toContainText('JPY · yen');
  await expect(dialog).toContainText('Cambiar de moneda no convierte nada');
  await check('units and language');
  await dialog.getByRole('button', { name: 'Cerrar' }).click();

  // The work goes on where it was: the same room, the same copy selected, nothing loaded anew.
  await expect(sentence(page)).toContainText(/\d,\d\d\sm de película, \d+,\d\s% de merma, /);
  await expect(filmSurface(page)).toHaveAccessibleName('Película con 5 copias');
  await expect(page.getByRole('button', { name: 'Fijar aquí' })).toBeVisible();
  await expect(page.locator('.copy-table')).toContainText('140,5 × 140 mm');
  await check('film');
  await page.keyboard.press('Escape');
  await filmSurface(page).focus();
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog', { name: 'Todas las teclas' })).toContainText('Girar');
  await page.keyboard.press('Escape');

  await page.getByRole('link', { name: 'Pedidos' }).click();
  await expect(page.getByText('2 pedidos, 2 transfers, 5 copias')).toBeVisible();
  await check('orders');
  // A decimal comma is read, and a sentence beside a field is Spanish too.
  const width = page.getByRole('textbox', { name: 'Ancho' }).first();
  await width.fill('88,5 milímetros');
  await width.press('Enter');
  await expect(width).toHaveValue('88,5 milímetros');
  await width.fill('ancho');
  await width.press('Enter');
  await expect(page.getByText('Esto no es una longitud.')).toBeVisible();
  await width.press('Escape');

  // Another device's Spanish table is understood.
  await page.getByRole('button', { name: 'Pegar una tabla' }).click();
  await page
    .getByRole('textbox', { name: 'Tabla' })
    .fill(
      'Pedido;Diseño;Ancho (cm);Alto en mm;Cantidad;Entrega;Se puede girar\nFeria;frente;8,9;120,5;4;;Sí',
    );
  await page.getByRole('button', { name: 'Añadir 1 transfer' }).click();
  await expect(page.getByText('1 transfer añadido.')).toBeVisible();

  await page.getByRole('link', { name: 'Planchado' }).click();
  await expect(page.getByRole('heading', { name: 'Lo que viene ahora' })).toBeVisible();
  // In the evening the work ends tomorrow, and its time bears the day.
  await expect(page.getByTestId('done-by')).toContainText(/Lista (el \S+ )?a las \d\d:\d\d/);
  await check('press');

  await kept(page);
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Lo que viene ahora' })).toBeVisible();
  await expect(html).toHaveAttribute('lang', 'es');
  await page.goto('./#/cut-map');
  await expect(page.locator('.sheet').first()).toContainText('TINTA ARRIBA, COMO SALE');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Guardar como PDF' }).click();
  expect((await download).suggestedFilename()).toBe('plano de corte Run 1.pdf');

  await speak(page, 'Taller', 'Unidades e idioma', 'English');
  await expect(page.getByRole('dialog', { name: 'Units and language' })).toBeVisible();
  await page.getByRole('button', { name: 'Close' }).click();
  await expect(page.getByRole('heading', { name: 'Cut map' })).toBeVisible();
  await expect(html).toHaveAttribute('lang', 'en');
  await page.goto('./#/film');
  await expect(sentence(page)).toContainText('of film');
});

test.describe('a browser in Spanish', () => {
  test.use({ locale: 'es-MX' });

  test('begins in Spanish, by the figures of its region, the demo day too, and the language chosen there is that of the shop’s own book', async ({
    page,
  }) => {
    await page.goto('./');
    await expect(page.locator('html')).toHaveAttribute('lang', 'es');
    await expect(page.getByText('Este es un día de muestra con pedidos inventados.')).toBeVisible();
    // Mexico writes a decimal point.
    await expect(sentence(page)).toContainText(/\d\.\d\d\sm de película/);
    await stopSearch(page, 'Parar');
    await expect(page.getByText('Panadería El Horno')).toBeVisible();
    await expect(page.getByLabel('Tirada', { exact: true })).toContainText('Tirada 1');

    await speak(page, 'Taller', 'Unidades e idioma', 'English');
    await page.getByRole('button', { name: 'Close' }).click();
    await page.getByRole('button', { name: 'Start with my own orders' }).click();
    await expect(page.getByText('The film is empty')).toBeVisible();
  });
});
