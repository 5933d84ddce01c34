import { useCallback, useEffect, useRef, useState } from 'react';
import { type Collected, collect, isSealed, wholeOf } from '../../src/hand-over';
import { type CodeReader, openReader } from '../../src/hand-over/browser';
import { sayFailed } from '../store/failures';
import { type Arrived, takeInBytes } from '../store/hand-over';
import { waysNow } from '../store/selectors';
import { goTo, notify, openDialog, openRun } from '../store/view';
import { allWordsNow } from '../words';

/** Says what came of a hand-over, and shows the run if it is here. */
function welcome({ kind, run, name, ticks, spoilages, why }: Arrived): void {
  const ways = waysNow();
  const { taken } = allWordsNow().handOver;
  if (kind === 'aside') notify('care', taken.aside(name, why ?? 'unknown'));
  else if (kind === 'ticks') notify('plain', taken.ticks(name, ticks, spoilages, ways));
  else if (kind === 'again') notify('plain', taken.again(name, ticks, ways));
  else notify('plain', taken.run(name));
  if (kind !== 'aside') openRun(run);
  goTo('press');
  openDialog(null);
}

/** What has been read of the hand-over at hand, and why the last code or file was refused. */
interface Taking {
  readonly collected: Collected | null;
  readonly problem: string | null;
  /** Looks at the text of a code. */
  readonly read: (text: string) => void;
  /** Opens hand-over files and pictures of codes. */
  readonly open: (files: readonly File[]) => Promise<void>;
  readonly anew: () => void;
  /** Reads codes in pictures, once it is up. */
  readonly reader: CodeReader | null;
}

/** Gathers codes and files until a hand-over is whole, then takes it in. */
export function useTaking(): Taking {
  const [collected, setCollected] = useState<Collected | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [reader, setReader] = useState<CodeReader | null>(null);
  const now = useRef<Collected | null>(null);
  const isTaking = useRef(false);
  useEffect(() => {
    const opened = openReader();
    setReader(opened);
    return () => opened.close();
  }, []);

  const take = useCallback(async (bytes: Uint8Array) => {
    if (isTaking.current) return;
    isTaking.current = true;
    const arrived = await takeInBytes(bytes).finally(() => {
      isTaking.current = false;
    });
    if (arrived.ok) return welcome(arrived.value);
    now.current = null;
    setCollected(null);
    const { notWriting, sealProblems } = allWordsNow().handOver;
    setProblem(arrived.problem === 'not-writing' ? notWriting : sealProblems[arrived.problem]);
  }, []);

  const read = useCallback(
    (text: string) => {
      const result = collect(now.current, text);
      if (!result.ok) return setProblem(allWordsNow().handOver.codeProblems[result.problem]);
      setProblem(null);
      if (result.value === now.current) return;
      now.current = result.value;
      setCollected(result.value);
      const whole = wholeOf(result.value);
      if (whole) void take(whole);
    },
    [take],
  );

  const open = useCallback(
    async (files: readonly File[]) => {
      for (const file of files) {
        const bytes = new Uint8Array(await file.arrayBuffer());
        if (isSealed(bytes)) await take(bytes);
        else {
          const text = await reader?.picture(file).catch((error) => sayFailed('codes', error));
          if (text === undefined) return;
          if (text === null) setProblem(allWordsNow().handOver.noCode(file.name));
          else read(text);
        }
      }
    },
    [read, reader, take],
  );

  const anew = () => {
    now.current = null;
    setCollected(null);
    setProblem(null);
  };
  return { collected, problem, read, open, anew, reader };
}
