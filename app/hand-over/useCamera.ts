import { useCallback, useEffect, useState } from 'react';
import { type CameraProblem, openCamera } from '../../src/hand-over/browser';

/** A camera that is let go of when it is turned off, when its window closes, even while the browser still asks for it. */
export function useCamera() {
  const [isWanted, setWanted] = useState(false);
  const [stream, setStream] = useState<MediaStream | null>(null);
  const [problem, setProblem] = useState<CameraProblem | null>(null);
  useEffect(() => {
    if (!isWanted) return;
    const closed = new AbortController();
    const giveUp = (why: CameraProblem) => {
      setProblem(why);
      setWanted(false);
    };
    void openCamera(closed.signal, () => giveUp('lost')).then((opened) => {
      if (closed.signal.aborted) return;
      if (opened.ok) setStream(opened.value);
      else giveUp(opened.problem);
    });
    return () => {
      closed.abort();
      setStream(null);
    };
  }, [isWanted]);
  const turnOff = useCallback(() => setWanted(false), []);
  return {
    stream,
    problem,
    /** Whether the browser still asks for it, or starts it. */
    isOpening: isWanted && stream === null,
    turnOn: () => {
      setProblem(null);
      setWanted(true);
    },
    turnOff,
  };
}
