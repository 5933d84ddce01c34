/**
 * Works something out once for each source, as long as the source is kept. Sources are never changed, they are replaced; what is found
 * is shared by all who ask.
 * @param find what is worked out: it looks at nothing but the source
 */
export function onceFor<Source extends object, Found>(
  find: (source: Source) => Found,
): (source: Source) => Found {
  const known = new WeakMap<Source, { readonly found: Found }>();
  return (source) => {
    const last = known.get(source);
    if (last) return last.found;
    const found = find(source);
    known.set(source, { found });
    return found;
  };
}
