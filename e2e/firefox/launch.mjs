#!/usr/bin/env node
/**
 * Starts a Firefox of the system for the browser tests, and stands between the two: the test tool speaks WebDriver BiDi as newer ones
 * have it, and what this one does not know of emulation is answered as done. Everything else passes as it is.
 */
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { createInterface } from 'node:readline';
import { WebSocket, WebSocketServer } from 'ws';

/** Forwards what the test tool sends, and what Firefox answers. */
function connect(tool, address) {
  const firefox = new WebSocket(address);
  /** Commands of emulation that are not answered yet, by their ids. */
  const emulations = new Set();
  const early = [];
  tool.on('message', (data) => {
    const { id, method } = JSON.parse(data.toString());
    if (method.startsWith('emulation.')) emulations.add(id);
    if (firefox.readyState === WebSocket.OPEN) firefox.send(data.toString());
    else early.push(data.toString());
  });
  firefox.on('open', () => {
    for (const data of early) firefox.send(data);
  });
  firefox.on('message', (data) => {
    const answer = JSON.parse(data.toString());
    const isUnknown = answer.error === 'unknown command' && emulations.has(answer.id);
    tool.send(isUnknown ? JSON.stringify({ type: 'success', id: answer.id, result: {} }) : data.toString());
  });
  tool.on('close', () => firefox.close());
  firefox.on('close', () => tool.close());
  firefox.on('error', () => tool.close());
}

const found = () =>
  (process.env.PATH ?? '')
    .split(delimiter)
    .flatMap((folder) => ['firefox', 'firefox-esr'].map((name) => join(folder, name)))
    .find((file) => existsSync(file));

const file = process.env.FIREFOX ?? found();
if (!file) throw new Error('No Firefox is found. Install one, or name its file in FIREFOX.');
const browser = spawn(file, process.argv.slice(2), {
  stdio: ['ignore', 'inherit', 'pipe'],
});
browser.on('exit', (code) => process.exit(code ?? 1));
for (const signal of ['SIGTERM', 'SIGINT']) process.on(signal, () => browser.kill(signal));

createInterface({ input: browser.stderr }).on('line', (line) => {
  const [, address] = line.match(/WebDriver BiDi listening on (ws:\/\/.*)$/) ?? [];
  if (!address) return console.error(line);
  const server = new WebSocketServer({ host: '127.0.0.1', port: 0 });
  server.on('connection', (tool, request) => connect(tool, address + request.url));
  server.on('listening', () =>
    console.error(`WebDriver BiDi listening on ws://127.0.0.1:${server.address().port}`),
  );
});
