/** What the library tells of a file that was found in the cache. */
interface Used {
  readonly cachedResponse?: Response | undefined;
  readonly cacheName: string;
  readonly request: Request;
}

/** What it tells of one that is to be fetched. */
interface Fetched {
  readonly request: Request;
  readonly event?: { readonly type: string } | undefined;
}

/** A digest as an `integrity` tells it (W3C Subresource Integrity): SHA-256 in base64. */
async function integrityOf(body: ArrayBuffer): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', body));
  return `sha256-${btoa(String.fromCharCode(...digest))}`;
}

/**
 * Takes a kept file only if it is what the build says it is; one that is not counts as missing, and is fetched anew, past the browser's own
 * cache, where it may lie damaged too.
 * @param integrityFor what a build says of the file kept under an address; `undefined` for one that it says nothing of
 */
export const wholeOnly = (integrityFor: (address: string) => string | undefined) => ({
  async cachedResponseWillBeUsed({ cachedResponse, cacheName, request }: Used): Promise<Response | null> {
    const integrity = integrityFor(request.url);
    if (!cachedResponse || !integrity) return cachedResponse ?? null;
    // A copy of its own is read, so that the browser still finds the compiled code beside the one that is handed on.
    const copy = await (await caches.open(cacheName)).match(request);
    return copy && (await integrityOf(await copy.arrayBuffer())) === integrity ? cachedResponse : null;
  },
  requestWillFetch: async ({ request, event }: Fetched): Promise<Request> =>
    event?.type === 'install' ? request : new Request(request, { cache: 'reload' }),
});
