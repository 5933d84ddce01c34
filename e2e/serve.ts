import { readFileSync, writeFileSync } from 'node:fs';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { buffer } from 'node:stream/consumers';
import { type PreviewServer, preview } from 'vite';
import { fileOfState, PORT, STATES } from './addresses';

/** Its empty icon keeps the browser from asking for one. */
const BLANK = '<!doctype html><link rel="icon" href="data:,">';

/**
 * An empty page of the app's address, from which its databases are read and written with no app at work, and the forms
 * that they are kept in: megabytes go over in a tenth of the time that they take by the browser's debugging connection.
 */
async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
  const name = decodeURIComponent((request.url ?? '/').slice(1));
  if (name === '') {
    response.setHeader('Content-Type', 'text/html');
    response.end(BLANK);
  } else if (request.method === 'POST') {
    writeFileSync(fileOfState(name), await buffer(request));
    response.end();
  } else {
    const form = readFileSync(fileOfState(name));
    // A form begins with its boundary.
    const boundary = form.toString('latin1', 2, form.indexOf('\r\n'));
    response.setHeader('Content-Type', `multipart/form-data; boundary=${boundary}`);
    response.end(form);
  }
}

const states = {
  name: 'states',
  configurePreviewServer({ middlewares }: PreviewServer) {
    // To pack a file takes longer than to send it whole to the same machine.
    middlewares.use((request, _response, next) => {
      request.headers['accept-encoding'] = 'identity';
      next();
    });
    middlewares.use(`/${STATES}`, (request, response, next) => {
      answer(request, response).catch(next);
    });
  },
};

await preview({ preview: { host: '127.0.0.1', port: PORT, strictPort: true }, plugins: [states] });
