import ts from 'typescript';

/** The folder of app that a file belongs to, however deep it lies. */
const folderOf = (file: string): string => file.split('/').slice(0, 2).join('/');

/** The selectors of a stylesheet, one for each comma outside of brackets. */
function selectorsOf(text: string): string[] {
  const bare = text.replaceAll(/\/\*.*?\*\//gs, '');
  const lists = [...bare.matchAll(/([^{};]+)\{/g)].map(([, list = '']) => list.trim());
  return lists.flatMap((list) =>
    list.startsWith('@') ? [] : list.split(/,(?![^(]*\))/).map((selector) => selector.trim()),
  );
}

const classesIn = (selector: string): string[] =>
  [...selector.matchAll(/\.([a-z][\w-]*)/g)].map(([, name = '']) => name);

/** The classes that a component gives to what it draws: all words of its class names. */
function classesOf(text: string): Set<string> {
  const found = new Set<string>();
  const words = (node: ts.Node): void => {
    if (ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node)) {
      for (const word of node.text.split(/\s+/)) found.add(word);
    }
    ts.forEachChild(node, words);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isJsxAttribute(node) && node.name.getText() === 'className') words(node);
    else ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile('.tsx', text, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX));
  return found;
}

/**
 * The selectors of rooms' stylesheets that reach further than their room. Each must hold a class of the room's own: one
 * that no component of another folder uses, and no stylesheet of another folder styles.
 * @param files stylesheets and components by their paths
 * @param shared folders whose stylesheets are there for every room
 * @returns `path: selector` of each
 */
export function farReaching(files: Readonly<Record<string, string>>, shared: readonly string[]): string[] {
  const styles = Object.entries(files).filter(([file]) => file.endsWith('.css'));
  const users = new Map<string, Set<string>>();
  const use = (name: string, folder: string) => users.set(name, (users.get(name) ?? new Set()).add(folder));
  for (const [file, text] of Object.entries(files)) {
    const names = file.endsWith('.css') ? selectorsOf(text).flatMap(classesIn) : classesOf(text);
    if (!file.endsWith('.css') || shared.includes(folderOf(file))) {
      for (const name of names) use(name, folderOf(file));
    }
  }
  return styles
    .filter(([file]) => !shared.includes(folderOf(file)))
    .flatMap(([file, text]) => {
      const isOwn = (name: string) =>
        [...(users.get(name) ?? [])].every((folder) => folder === folderOf(file));
      return selectorsOf(text)
        .filter((selector) => !classesIn(selector).some(isOwn))
        .map((selector) => `${file}: ${selector}`);
    });
}

/** The files that a module takes with it, itself too; what it fetches only when it is asked for is not among them. */
function takenBy(start: string, files: Readonly<Record<string, string>>): Set<string> {
  const taken = new Set<string>();
  const take = (file: string): void => {
    if (taken.has(file)) return;
    taken.add(file);
    for (const [, from] of (files[file] ?? '').matchAll(/^(?:import|export|\})[^;(]*?'(\.[^']+)';/gm)) {
      const path = new URL(from ?? '', `file:///${file}`).pathname.slice(1);
      const found = [path, `${path}.tsx`, `${path}.ts`, `${path}/index.ts`].find((each) => each in files);
      if (found) take(found);
    }
  };
  take(start);
  return taken;
}

/**
 * What a room or a window shows without the stylesheet that its classes stand in.
 * @param files the modules and stylesheets of app by their paths
 * @param start the module that every page begins with
 * @returns `component: stylesheet` of each
 */
export function unstyled(files: Readonly<Record<string, string>>, start: string): string[] {
  const classes = new Map(
    Object.entries(files)
      .filter(([file]) => file.endsWith('.css'))
      .map(([file, text]) => [file, new Set(selectorsOf(text).flatMap(classesIn))]),
  );
  const always = takenBy(start, files);
  const doors = Object.keys(files).filter((file) => /(Dialog|Room)\.tsx$/.test(file));
  return doors.flatMap((door) => {
    const taken = takenBy(door, files);
    const here = [...taken, ...always].flatMap((file) => [...(classes.get(file) ?? [])]);
    const lacking = [...taken].flatMap((file) =>
      file.endsWith('.tsx')
        ? [...classesOf(files[file] ?? '')].flatMap((name) =>
            here.includes(name)
              ? []
              : [...classes].filter(([sheet, own]) => folderOf(sheet) === folderOf(file) && own.has(name)),
          )
        : [],
    );
    return [...new Set(lacking.map(([sheet]) => `${door}: ${sheet}`))];
  });
}
