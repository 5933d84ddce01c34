/** Removes the app's own service workers and the files that they keep; what is stored in databases stays. */
export async function removeFiles(): Promise<void> {
  const scope = new URL('./', location.href).href;
  const registrations = (await navigator.serviceWorker?.getRegistrations()) ?? [];
  for (const registration of registrations) if (registration.scope === scope) await registration.unregister();
  for (const name of await caches.keys()) if (name.endsWith(scope)) await caches.delete(name);
}
