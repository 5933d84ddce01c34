import { join } from 'node:path';
import ts from 'typescript';
import { beforeAll, describe, expect, it } from 'vitest';
import { ROOT } from './cruise';

const PLANTED = join(ROOT, 'src/units/planted.ts');

/** None of the language's own: each is of Node, of browsers or of both. */
const globals = [
  'process',
  'Buffer',
  'console',
  'structuredClone',
  'TextDecoder',
  'setTimeout',
  'AbortSignal',
  'URL',
  'fetch',
  'crypto',
  'performance',
  'window',
  'document',
  'navigator',
  'self',
  'Worker',
];

/** What the type check of pure code says of a file that is planted among it. */
function saidOf(text: string): string[] {
  const config = join(ROOT, 'src/tsconfig.json');
  const { fileNames, options } = ts.parseJsonConfigFileContent(
    ts.readConfigFile(config, ts.sys.readFile).config,
    ts.sys,
    join(ROOT, 'src'),
  );
  const host = ts.createCompilerHost(options);
  const { getSourceFile } = host;
  host.getSourceFile = (name, ...how) =>
    name === PLANTED.replaceAll('\\', '/')
      ? ts.createSourceFile(name, text, ts.ScriptTarget.ES2023)
      : getSourceFile.call(host, name, ...how);
  const program = ts.createProgram([...fileNames, PLANTED], options, host);
  return program
    .getSemanticDiagnostics(program.getSourceFile(PLANTED))
    .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, ' '));
}

describe('pure code', () => {
  let said: string[];

  beforeAll(() => {
    said = saidOf(
      `export const known = [Math.PI, Intl, Promise];\nexport const seen = [${globals.join(', ')}];\n`,
    );
  }, 60_000);

  it.each(globals)('does not see %s', (name) => {
    expect(said.some((sentence) => sentence.startsWith(`Cannot find name '${name}'`))).toBe(true);
  });

  it('sees the language', () => {
    expect(said).toHaveLength(globals.length);
  });
});
