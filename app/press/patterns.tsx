import type { JobKind } from '../../src/pressing';

/** Lines and dots by which printed bars are told apart without colour; what has none is plain. */
const PATTERNS: Partial<Record<JobKind, string>> = {
  print: 'M0 8V0',
  powder: 'M3.4 4h1.2',
  cure: 'M-1 9L9 -1M-1 1L1 -1M7 9L9 7',
  line: 'M-1 9L9 -1M-1 1L1 -1M7 9L9 7',
  apart: 'M0 4H8',
  again: 'M-1 -1L9 9M-1 7L1 9M7 -1L9 1',
  pack: 'M0 4H8M4 0V8',
};

const idOf = (kind: JobKind) => `pattern-${kind}`;

/** What {@link Patterned} refers to; once in a drawing. */
export const PatternDefs = () => (
  <defs>
    {(Object.entries(PATTERNS) as [JobKind, string][]).map(([kind, path]) => (
      <pattern key={kind} id={idOf(kind)} width="8" height="8" patternUnits="userSpaceOnUse">
        <path d={path} fill="none" stroke="#000" strokeWidth={kind === 'powder' ? 2 : 0.8} />
      </pattern>
    ))}
  </defs>
);

interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The pattern of a kind of job over a bar of it, on paper only. */
export const Patterned = ({ kind, ...at }: Place & { kind: JobKind }) =>
  PATTERNS[kind] === undefined ? null : (
    <rect className="pattern" {...at} style={{ fill: `url(#${idOf(kind)})` }} />
  );
