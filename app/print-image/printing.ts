import { create } from 'zustand';
import { edits } from '../../src/editing';
import type { Id } from '../../src/model';
import type { PrintImage } from '../../src/output/print-image';
import {
  type ImageProblem,
  type ImageSource,
  sweepPrivateFiles,
  type WhiteChoice,
  writeImages,
} from '../../src/output/print-image/browser';
import { WorkerFailed } from '../../src/workers/browser';
import { sayFailed } from '../store/failures';
import { stopLooking } from '../store/offers';
import { waysNow } from '../store/selectors';
import { act, mayWrite, useShop } from '../store/shop';
import { notify } from '../store/view';
import { allWordsNow } from '../words';
import { openTargets } from './targets';

type Printing =
  | { readonly kind: 'idle' }
  | { readonly kind: 'writing'; readonly share: number; readonly stop: () => void };

/** The images that are being written. Lives until the tab closes. */
export const usePrinting = create<{ readonly printing: Printing }>(() => ({ printing: { kind: 'idle' } }));

/** An image and the name of its file. */
export interface NamedImage {
  readonly image: PrintImage;
  readonly name: string;
  readonly form: 'png' | 'pdf' | 'tiff';
  /** The white that is written with it; `file`: where that is a file of its own. */
  readonly white: (WhiteChoice & { readonly file: string | null }) | null;
}

/** A tab that is closed takes a half written image with it: the browser asks first. */
const askFirst = (event: BeforeUnloadEvent): void => event.preventDefault();

/**
 * Asks where the images go, writes them, and says how it went.
 * @param noted the run that they are of, and what they make up for along the film: distances on its map follow
 */
export async function printImages(
  named: readonly NamedImage[],
  sources: readonly ImageSource[],
  noted: { readonly run: Id<'run'>; readonly feed: number } | null,
): Promise<void> {
  if (usePrinting.getState().printing.kind === 'writing') return;
  const filesOf = ({ name, white }: NamedImage) => (white?.file ? [name, white.file] : [name]);
  const names = named.flatMap(filesOf);
  const opened = await openTargets(names);
  if (opened === 'dismissed') return;
  if (opened === 'unable') {
    notify('error', allWordsNow().printImage.noFiles);
    return;
  }
  stopLooking();
  const stopped = new AbortController();
  const done = new AbortController();
  const stop = () => stopped.abort();
  usePrinting.setState({ printing: { kind: 'writing', share: 0, stop } });
  addEventListener('beforeunload', askFirst, { signal: done.signal });
  const targets = [...opened.targets];
  const images = named.flatMap((each) => {
    const { image, name, form, white } = each;
    const [target, whiteTarget = null] = targets.splice(0, filesOf(each).length);
    return target ? [{ image, target, form, title: name, white, whiteTarget }] : [];
  });
  // Told through a channel of its own, it may come after the end.
  const onProgress = (share: number) =>
    usePrinting.setState(({ printing }) =>
      printing.kind === 'writing' ? { printing: { kind: 'writing', share, stop } } : { printing },
    );
  try {
    const job = { images, sources, scratch: opened.scratch };
    const written = await writeImages(job, stopped.signal, onProgress);
    if (written.ok) {
      await opened.save();
      if (noted && mayWrite()) act(edits.noteImage(noted.run, noted.feed));
      notify('plain', allWordsNow().printImage.saved(names, waysNow()));
      // Overtaken while it was written.
      if (noted && !mayWrite()) notify('care', allWordsNow().printImage.notNoted);
    } else sayProblem(written.problem);
  } catch (error) {
    if (error instanceof WorkerFailed) sayFailed('printImage', error);
    else sayProblem({ code: 'not-written' });
  } finally {
    done.abort();
    usePrinting.setState({ printing: { kind: 'idle' } });
    await opened.clear();
  }
}

function sayProblem(problem: ImageProblem): void {
  const artwork = problem.code === 'artwork' ? useShop.getState().book.artwork[problem.artwork] : undefined;
  const tone = problem.code === 'stopped' ? 'plain' : 'error';
  notify(tone, allWordsNow().printImage.problems(problem, artwork?.fileName ?? ''));
}

/** Removes what exports left behind that were ended with their tab. */
export const sweepImages = (): void => void sweepPrivateFiles().catch(() => undefined);
