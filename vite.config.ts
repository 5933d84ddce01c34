import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { licencesText, shippedPackages } from './.ci/licences.mjs';

/** No inline script, no outside origin, workers from ourselves; the styles React sets go through the CSSOM. */
const RULES = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
];

/** The page alone holds its own code to Trusted Types; the service worker loads none. */
const POLICY = [...RULES, "require-trusted-types-for 'script'", 'trusted-types default'].join('; ');

/** What whoever serves the folder elsewhere should send too: a page cannot forbid by itself that it is framed. */
const HEADERS = {
  'Content-Security-Policy': [...RULES, "frame-ancestors 'none'"].join('; '),
  'Permissions-Policy': 'camera=(self), microphone=(), geolocation=()',
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
};

/**
 * What a built page begins with. The policy goes into it, so that any plain host serves it; the dev server needs inline scripts. Then
 * comes what watches over the app's own code, before that is asked for.
 */
const beginning: Plugin = {
  name: 'beginning',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY },
      injectTo: 'head-prepend',
    },
    { tag: 'script', attrs: { src: './reopen.js' }, injectTo: 'head-prepend' },
  ],
};

/** The licences of what ships go with it, as the app links to them. */
const licences: Plugin = {
  name: 'licences',
  apply: 'build',
  generateBundle() {
    const source = licencesText(shippedPackages(import.meta.dirname));
    this.emitFile({ type: 'asset', fileName: 'licences.txt', source });
  },
};

/** Each file that is kept with its digest (W3C Subresource Integrity), so that one that is cut off, or of another build, is not taken for it. */
const withIntegrity = <Entry extends { readonly url: string }>(entry: Entry) => {
  const digest = createHash('sha256')
    .update(readFileSync(`dist/${entry.url}`))
    .digest('base64');
  return { ...entry, integrity: `sha256-${digest}` };
};

export default defineConfig({
  // Relative addresses: any host can serve the folder from any path.
  base: './',
  plugins: [
    react(),
    beginning,
    licences,
    VitePWA({
      strategies: 'injectManifest',
      srcDir: 'app/offline/service-worker',
      filename: 'sw.ts',
      injectRegister: false,
      includeManifestIcons: false,
      manifest: {
        name: 'Rollwright',
        short_name: 'Rollwright',
        description: 'From a pile of orders to transfers on film.',
        start_url: './',
        display: 'standalone',
        background_color: '#FAF9F6',
        theme_color: '#0B5F66',
        screenshots: [
          { src: 'screenshots/film.png', sizes: '1440x900', type: 'image/png', form_factor: 'wide' },
        ],
        icons: [
          { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: 'icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
        ],
      },
      injectManifest: {
        globIgnores: ['screenshots/**'],
        globPatterns: ['**/*.{js,css,html,svg,png,txt,woff,woff2,icc}'],
        maximumFileSizeToCacheInBytes: 4_000_000,
        manifestTransforms: [(entries) => ({ manifest: entries.map(withIntegrity) })],
      },
    }),
  ],
  preview: { headers: HEADERS },
  worker: { format: 'es' },
  build: {
    target: 'es2022',
    modulePreload: { polyfill: false },
    rolldownOptions: {
      input: ['index.html', 'recovery.html'],
      output: {
        codeSplitting: {
          // What the first screen needs is fetched at once and packs best together; the recovery page has nothing of it.
          groups: [{ name: 'first', tags: ['$initial'], test: (id) => !id.includes('recovery') }],
        },
      },
    },
  },
});
