import { unavailable as en } from '../../words/en/unavailable';
import { unavailable as es } from '../../words/es/unavailable';

const words = { en, es };

/** The page in place of the app where its files cannot be had, in the reader's language: it says so, and what to do. */
export function unavailablePage(languages: readonly string[]): Response {
  const language =
    languages.map((tag) => tag.slice(0, 2)).find((tag) => tag === 'en' || tag === 'es') ?? 'en';
  const { title, said, mend, recovery } = words[language];
  const page = `<!doctype html>
<html lang="${language}">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${title}</title>
<h1>${title}</h1>
<p>${said}</p>
<p>${mend}</p>
<p><a href="./recovery.html">${recovery}</a></p>
</html>`;
  return new Response(page, { status: 503, headers: { 'content-type': 'text/html; charset=utf-8' } });
}
