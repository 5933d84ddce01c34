import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { licencesText, shippedPackages } from '../../.ci/licences.mjs';

/** SPDX expressions under which a package may go into what we hand out. */
const allowed = ['0BSD', 'Apache-2.0', 'BSL-1.0', 'ISC', 'MIT', '(MIT OR Apache-2.0)', 'OFL-1.1'];

describe('the licences of what ships', () => {
  const root = `${import.meta.dirname}/../..`;
  const shipped = shippedPackages(root);
  const text = licencesText(shipped);

  it('name every package that the app is made from, and what it is made from', () => {
    const { dependencies } = JSON.parse(readFileSync(`${root}/package.json`, 'utf8')) as {
      dependencies: Readonly<Record<string, string>>;
    };
    for (const [name, version] of Object.entries(dependencies))
      expect(text).toContain(`${name} ${version}: `);
    // What a library brings along.
    expect(text).toContain('react-reconciler ');
    expect(text).not.toContain('vitest');
  });

  it.each(shipped)('let $name be handed out: $licence', ({ licence }) => {
    expect(allowed).toContain(licence);
  });

  it('carry each text once', () => {
    const [{ text: own } = { text: '' }] = shipped.filter(({ name }) => name === 'react');
    expect(own.length).toBeGreaterThan(500);
    expect(text.split(own)).toHaveLength(2);
  });
});
