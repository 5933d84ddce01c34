import { memo } from 'react';
import type { Mark, Page } from '../../src/output/cut-map';
import type { Thumbnail } from '../panels/useThumbnails';
import { useAllWords } from '../words';
import { tones } from './tones';

type Thumbnails = ReadonlyMap<string, Thumbnail>;

function Drawn({ mark, thumbnails }: { mark: Mark; thumbnails: Thumbnails }) {
  const colour = mark.kind === 'picture' ? undefined : tones[mark.tone];
  switch (mark.kind) {
    case 'line':
      return (
        <line
          x1={mark.x1}
          y1={mark.y1}
          x2={mark.x2}
          y2={mark.y2}
          stroke={colour}
          strokeWidth={mark.thick}
          strokeDasharray={mark.dash?.join(' ')}
        />
      );
    case 'box':
      return (
        <rect
          x={mark.x}
          y={mark.y}
          width={mark.width}
          height={mark.height}
          fill="none"
          stroke={colour}
          strokeWidth={mark.thick}
        />
      );
    case 'ring':
      return (
        <polygon
          points={mark.points.map((point) => point.join(' ')).join(' ')}
          fill="none"
          stroke={colour}
          strokeWidth={mark.thick}
        />
      );
    case 'picture':
      return (
        <image
          x={mark.x}
          y={mark.y}
          width={mark.width}
          height={mark.height}
          preserveAspectRatio="none"
          href={thumbnails.get(mark.artwork)?.url}
        />
      );
    case 'text':
      return (
        <text
          x={mark.x}
          y={mark.y}
          fontSize={mark.size}
          fontWeight={mark.weight}
          textAnchor={mark.anchor}
          fill={colour}
          transform={mark.upright ? `rotate(-90 ${mark.x} ${mark.y})` : undefined}
        >
          {mark.text}
        </text>
      );
  }
}

/** A sheet of the map, on screen and as the browser prints it: the same marks as in the PDF. */
export const SheetDrawing = memo(function SheetDrawing({
  page,
  paper,
  thumbnails,
}: {
  page: Page;
  paper: string;
  thumbnails: Thumbnails;
}) {
  const { cutMap } = useAllWords();
  const { width, height, marks, number, of } = page;
  return (
    <svg
      className="sheet"
      data-paper={paper}
      viewBox={`0 0 ${width} ${height}`}
      preserveAspectRatio="xMinYMin slice"
      width={`${width}mm`}
      height={`${height}mm`}
      role="img"
      aria-label={cutMap.sheet(number, of)}
    >
      {marks.map((mark, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: marks have no identity and are never reordered
        <Drawn key={index} mark={mark} thumbnails={thumbnails} />
      ))}
    </svg>
  );
});
