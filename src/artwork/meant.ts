import type { Id, Meant } from '../model';
import { type Finding, type Grade, worstGrade } from './findings';

/** How far a finding goes, in figures that grow as it gets worse; none where it is there or not. */
function amountsOf(finding: Finding): number[] {
  switch (finding.code) {
    case 'coarse':
      return [-Math.floor(finding.x), -Math.floor(finding.y)];
    case 'profile':
      return [finding.clipped ?? 0];
    case 'coarse-image':
      return [-finding.ppi];
    case 'font':
      return [finding.names.length];
    case 'stretched':
    case 'see-through':
    case 'fringe':
    case 'black-on-black':
      return [finding.share];
    case 'thin-strokes':
    case 'thin-white':
    case 'openings':
    case 'screen-dots':
    case 'screen-holes':
      return [finding.count, -finding.least];
    case 'white-lost':
    case 'specks':
    case 'strays':
    case 'outside':
      return [finding.count];
    default:
      return [];
  }
}

/** The record that a finding in an artwork is meant so, as far as it goes now. */
export const meantSo = (finding: Finding, artwork: Id<'artwork'>): Meant => ({
  finding: finding.code,
  artwork,
  amounts: amountsOf(finding),
});

/**
 * Whether a finding was called meant: in the same artwork, when it was no less bad. A larger print, another artwork or stricter
 * limits ask again.
 */
export const isMeant = (
  finding: Finding,
  { artwork, meant }: { readonly artwork: Id<'artwork'> | null; readonly meant: readonly Meant[] },
): boolean =>
  meant.some(
    (known) =>
      known.finding === finding.code &&
      known.artwork === artwork &&
      amountsOf(finding).every(
        (amount, index) => amount <= (known.amounts[index] ?? Number.NEGATIVE_INFINITY),
      ),
  );

/** What is said of a transfer's artwork. `meant`: all that was found is called meant. */
export type Verdict = Grade | 'meant';

/** The grade of the worst finding that is not called meant. */
export function verdictOn(findings: readonly Finding[], transfer: Parameters<typeof isMeant>[1]): Verdict {
  const open = findings.filter((finding) => !isMeant(finding, transfer));
  const grade = worstGrade(open);
  return grade === 'good' && open.length < findings.length ? 'meant' : grade;
}
