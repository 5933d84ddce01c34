// The browser may give up the app's own code on a busy machine: then the page is loaded once more. See DEVELOPERS.md.
addEventListener(
  'error',
  ({ target }) => {
    if (!(target instanceof HTMLScriptElement)) return;
    try {
      const key = 'rollwright-reopened';
      if (Date.now() - sessionStorage[key] < 10_000) return;
      sessionStorage[key] = Date.now();
    } catch {
      return;
    }
    location.reload();
  },
  true,
);
