import { expect, it } from 'vitest';
import { unavailablePage } from '../../../app/offline/service-worker/unavailable';
import { unavailable as en } from '../../../app/words/en/unavailable';
import { unavailable as es } from '../../../app/words/es/unavailable';

it.each([
  ['Spanish', ['es-MX', 'en'], 'es', es],
  ['English', ['en-GB'], 'en', en],
  ['the first language that there are words in', ['nl', 'es'], 'es', es],
  ['English where there are words in none', ['nl'], 'en', en],
])('the page in place of the app is in %s', async (_, languages, language, words) => {
  const page = unavailablePage(languages);
  expect(page.headers.get('content-type')).toContain('text/html');
  const text = await page.text();
  expect(text).toContain(`<html lang="${language}">`);
  for (const sentence of Object.values(words)) expect(text).toContain(sentence);
});
