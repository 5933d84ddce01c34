import { encodeQR } from 'qr';
import { memo } from 'react';

/** Modules that must stay white around a code (ISO/IEC 18004). */
const QUIET = 4;

/** The dark modules as one path, a stretch of a row at a time. */
function pathOf(modules: readonly (readonly boolean[])[]): string {
  const path: string[] = [];
  modules.forEach((row, y) => {
    for (let x = 0; x < row.length; x += 1) {
      if (!row[x]) continue;
      const from = x;
      while (row[x + 1]) x += 1;
      path.push(`M${from} ${y}h${x + 1 - from}v1H${from}z`);
    }
  });
  return path.join('');
}

/** A code as a camera reads it: black on white whatever the page's colours, with its quiet zone. */
export const CodePicture = memo(function CodePicture({ text, label }: { text: string; label: string }) {
  const modules = encodeQR(text, 'raw', { ecc: 'medium', encoding: 'alphanumeric', border: 0 });
  const size = modules.length + 2 * QUIET;
  return (
    <svg
      className="code-picture"
      viewBox={`${-QUIET} ${-QUIET} ${size} ${size}`}
      role="img"
      aria-label={label}
    >
      <rect x={-QUIET} y={-QUIET} width={size} height={size} fill="#fff" />
      <path d={pathOf(modules)} fill="#000" shapeRendering="crispEdges" />
    </svg>
  );
});
