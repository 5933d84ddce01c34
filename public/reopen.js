// On a busy machine the browser may give up a file of the app that is there. The app asks for its parts again by itself; where its
// own code was given up, which nothing would ask for again, the page is loaded once more.
const TRIED = 'rollwright-reopened';
const SOON = 10_000;

addEventListener(
  'error',
  ({ target }) => {
    if (!(target instanceof HTMLScriptElement)) return;
    try {
      if (Date.now() - Number(sessionStorage.getItem(TRIED)) < SOON) return;
      sessionStorage.setItem(TRIED, String(Date.now()));
    } catch {
      // Without a memory of it the page might be loaded for ever.
      return;
    }
    location.reload();
  },
  true,
);
