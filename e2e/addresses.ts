import { fileURLToPath } from 'node:url';

/** Where the built app is served while it is tested. */
export const PORT = 4181;

export const ADDRESS = `http://127.0.0.1:${PORT}/`;

/** A file of the app's address that is no page of the app, and the quickest to show. */
export const ASIDE = './icon.svg';

/** The path, beside the app's own, of an empty page and of the states that tests begin from. */
export const STATES = 'states/';

/** The folder in which states are kept, which is emptied before each run. */
export const STATES_FOLDER = fileURLToPath(new URL('../test-results/states', import.meta.url));

export const fileOfState = (name: string): string => `${STATES_FOLDER}/${name}`;
