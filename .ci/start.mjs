/** `npm start`: installs what is missing, builds what has changed, serves the app on one fixed address. */
import { createServer } from 'node:net';
import { build } from './build.mjs';
import { installPackages } from './install.mjs';

/** What is stored in the browser belongs to this very address, so it never changes. */
const HOST = '127.0.0.1';
const PORT = 4180;

const isFree = () =>
  new Promise((resolve) => {
    const probe = createServer();
    probe.once('error', () => resolve(false));
    probe.listen(PORT, HOST, () => probe.close(() => resolve(true)));
  });

if (!(await isFree())) {
  console.error(
    `http://${HOST}:${PORT} is taken, perhaps by Rollwright itself: open it and see. Otherwise end the other program; Rollwright keeps to this address, since a browser stores its data by address.`,
  );
  process.exit(1);
}
installPackages();
await build();
const { preview } = await import('vite');
await preview({ preview: { host: HOST, port: PORT, strictPort: true } });
console.log(`Rollwright is at http://${HOST}:${PORT} (Ctrl+C ends it)`);
