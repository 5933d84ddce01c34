import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * @typedef {object} Shipped a package that the built app is made from
 * @property {string} name
 * @property {string} version
 * @property {string} licence its SPDX expression
 * @property {string} text the licence as the package carries it; empty where it carries none
 */

/** The licence files of a package; some carry several. */
const textOf = (folder) =>
  readdirSync(folder)
    .filter((name) => /^licen[cs]e/i.test(name))
    .map((name) => readFileSync(join(folder, name), 'utf8').trim())
    .join('\n\n');

/**
 * Every package that is installed to be shipped, by the lock file: what is for development alone is none.
 * @param {string} root the folder of the lock file
 * @returns {Shipped[]}
 */
export function shippedPackages(root) {
  const { packages } = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));
  return Object.entries(packages)
    .filter(([path, { dev, optional, peer }]) => path !== '' && !dev && !optional && !peer)
    .map(([path, { version, license = '' }]) => ({
      name: path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length),
      version,
      licence: license,
      text: textOf(join(root, path)),
    }));
}

/** The licences of all that ships as one text: which packages, then each text once with the packages that it is of. */
export function licencesText(/** @type {readonly Shipped[]} */ shipped) {
  const named = ({ name, version }) => `${name} ${version}`;
  const texts = new Map();
  for (const each of shipped.filter(({ text }) => text !== ''))
    texts.set(each.text, [...(texts.get(each.text) ?? []), each]);
  const list = shipped.map((each) => `${named(each)}: ${each.licence}`);
  const whole = [...texts].map(([text, all]) => `${all.map(named).join(', ')}\n\n${text}`);
  return [['Rollwright is made with these packages.', ...list].join('\n'), ...whole].join(
    `\n\n${'-'.repeat(72)}\n\n`,
  );
}
