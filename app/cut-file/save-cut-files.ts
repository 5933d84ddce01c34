import { type CutFile, cutDxf, cutSvg, LAYERS, zipped } from '../../src/output/cut-file';
import { download } from '../files/download';
import { safeName } from '../files/file-name';
import { notify } from '../store/view';
import { allWordsNow } from '../words';

/** Writes the lines of each span as a file, several in one archive, and hands them to the downloads. */
export function saveCutFiles(
  run: string,
  files: readonly CutFile[],
  form: 'svg' | 'dxf',
  lies: string,
): void {
  const { cutFile: words } = allWordsNow();
  const write = form === 'svg' ? cutSvg : cutDxf;
  const texts = new Map(
    files.map((file) => {
      const title = words.fileName(run, file.of > 1 ? file : null);
      return [
        `${safeName(title)}.${form}`,
        write(file, { title, note: words.note(LAYERS.cut, LAYERS.corners, lies) }),
      ] as const;
    }),
  );
  const [only] = texts;
  if (!only) return;
  const [name, file] =
    texts.size === 1
      ? [only[0], new Blob([only[1]], { type: form === 'svg' ? 'image/svg+xml' : 'image/vnd.dxf' })]
      : [
          `${safeName(words.fileName(run, null))}.zip`,
          new Blob([zipped(texts, new Date())], { type: 'application/zip' }),
        ];
  download(file, name);
  notify('plain', words.saved(name));
}
