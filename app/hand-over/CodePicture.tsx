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
  const modules = encodeQR(text, 'raw', { ecc: 'medium', encoding: 'alphanumeric', border: QUIET });
  const size = modules.length;
  return (
    <svg className="code-picture" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label}>
      <rect width={size} height={size} fill="#fff" />
      <path d={pathOf(modules)} fill="#000" shapeRendering="crispEdges" />
    </svg>
  );
});
