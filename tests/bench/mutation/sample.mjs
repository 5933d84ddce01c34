/**
 * Leaves all but a share of the code unmutated, whole declarations at the top of a file at a time. Which ones follows from their
 * text and the seed alone, so that two runs of one revision see the same mutants.
 */
import { createHash } from 'node:crypto';
import { declareValuePlugin, PluginKind } from '@stryker-mutator/api/plugin';

const share = Number(process.env.MUTATION_SHARE ?? 1);
const seed = process.env.MUTATION_SEED ?? '1';

/** A number from 0 up to 1, by what it is drawn for. */
const lot = (key) => createHash('sha256').update(`${seed} ${key}`).digest().readUInt32BE() / 2 ** 32;

const isTop = ({ node, parent }) =>
  parent?.type === 'Program'
    ? node.type !== 'ExportNamedDeclaration'
    : parent?.type === 'ExportNamedDeclaration';

export const strykerPlugins = [
  declareValuePlugin(PluginKind.Ignore, 'sample', {
    shouldIgnore: (path) => (isTop(path) && lot(path.toString()) >= share ? 'not in the sample' : undefined),
  }),
];
