import { posix } from 'node:path';
import ts from 'typescript';

/** The folder that an import leads to: a file's own, or the one whose index it names. */
function folderOf(file: string, name: string, files: Readonly<Record<string, string>>): string {
  const path = posix.join(posix.dirname(file), name);
  return `${path}/index.ts` in files ? path : posix.dirname(path);
}

/** The folders that each folder imports from, types and lazy imports too; by the text of each file. */
function importsByFolder(files: Readonly<Record<string, string>>): Map<string, Set<string>> {
  const found = new Map<string, Set<string>>();
  for (const [file, text] of Object.entries(files)) {
    const folder = posix.dirname(file);
    const own = found.get(folder) ?? new Set();
    found.set(folder, own);
    for (const { fileName } of ts.preProcessFile(text).importedFiles) {
      if (fileName.startsWith('.')) own.add(folderOf(file, fileName, files));
    }
  }
  return found;
}

/** Pairs of folders that can be reached from each other, however deep they lie, by the text of each file. */
export function knots(files: Readonly<Record<string, string>>): string[] {
  const imports = importsByFolder(files);
  const reachedFrom = (start: string): Set<string> => {
    const seen = new Set<string>();
    const next = [...(imports.get(start) ?? [])];
    for (let folder = next.pop(); folder !== undefined; folder = next.pop()) {
      if (seen.has(folder)) continue;
      seen.add(folder);
      next.push(...(imports.get(folder) ?? []));
    }
    return seen;
  };
  const reached = new Map([...imports.keys()].map((folder) => [folder, reachedFrom(folder)]));
  return [...reached].flatMap(([a, seen]) =>
    [...seen].filter((b) => a < b && reached.get(b)?.has(a)).map((b) => `${a} <-> ${b}`),
  );
}
