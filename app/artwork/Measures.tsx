import { type ArtworkCheck, coverageOf, effectivePpi } from '../../src/artwork';
import type { Transfer } from '../../src/model';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { area, inkArea, outlineLength, pixelSize } from '../words/format';

/** Figures of one copy: pixels, ink, outline. */
export function Measures({ check, transfer }: { check: ArtworkCheck; transfer: Transfer }) {
  const { artwork: words } = useAllWords();
  const ways = useWays();
  const { pixels, sums, vector } = check;
  const ink = coverageOf(sums, pixels, transfer);
  const ppi = effectivePpi(pixels, transfer);
  const share = sums.bearing / (pixels.width * pixels.height);
  const rows: readonly (readonly [string, string])[] = [
    [words.printed, area(transfer.width, transfer.height, ways)],
    [words.pixels, vector ? words.vector : pixelSize(pixels.width, pixels.height, ways)],
    ...(vector ? [] : [[words.ppi, words.perInch(ppi.x, ppi.y, ways)] as const]),
    [words.bearing, words.bearingShare(ink.bearing, share, ways)],
    [words.colour, inkArea(ink.colour, ways)],
    [words.white, inkArea(ink.white, ways)],
    [words.outline, outlineLength(check.outlineLength, ways)],
  ];
  return (
    <section aria-labelledby="measures">
      <h3 id="measures">{words.measures}</h3>
      <dl className="measures">
        {rows.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
