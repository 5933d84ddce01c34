import type { Verdict } from '../../src/artwork';
import { useWords } from '../words';
import './grade.css';

const signs: Record<Verdict, string> = { good: '', meant: '', check: '!', poor: '✕' };

/** A grade by a shape, a sign, a colour and, where there is room, a word. */
export function GradeMark({ grade, short = false }: { grade: Verdict; short?: boolean }) {
  const { grade: words } = useWords();
  return (
    <span className={short ? `grade short ${grade}` : `grade ${grade}`}>
      <b aria-hidden="true">{signs[grade]}</b>
      {!short && words.names[grade]}
    </span>
  );
}
