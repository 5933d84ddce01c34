import type { ArtworkCheck, Finding, Limits } from '../../src/artwork';
import type { Artwork, Mend } from '../../src/model';
import { Button } from '../parts/Button';
import { GradeMark } from '../parts/GradeMark';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { marksOf } from './marks';
import { offerOf } from './offers';

/** Each finding with what to do about it, a button that shows its places, and one to call it meant. */
export function FindingList({
  check,
  findings,
  limits,
  kind,
  shown,
  onShow,
  onMend,
  meant,
  onMeant,
}: {
  check: ArtworkCheck;
  findings: readonly Finding[];
  limits: Limits;
  kind: Artwork['kind'];
  shown: Finding['code'] | 'none';
  onShow: (code: Finding['code'] | 'none') => void;
  onMend: (mend: Mend) => void;
  meant: (finding: Finding) => boolean;
  onMeant: (finding: Finding, meant: boolean) => void;
}) {
  const { artwork: words, mends } = useAllWords();
  const ways = useWays();
  if (findings.length === 0) return <p>{words.nothing}</p>;
  return (
    <ul className="findings">
      {findings.map((finding) => {
        const { what, mend } = words.said(finding, ways);
        const offer = offerOf(finding, limits, kind);
        const isShown = shown === finding.code;
        const isMeant = meant(finding);
        const act = isMeant ? words.notMeant : words.meant;
        return (
          <li key={finding.code}>
            <p className="found">
              <GradeMark grade={isMeant ? 'meant' : finding.grade} /> <strong>{what}</strong>
            </p>
            <p className="small">{mend}</p>
            <div className="acts">
              {marksOf(check, finding.code, limits) && (
                <Button
                  weight="plain"
                  aria-label={words.named(isShown ? words.shown : words.show, what)}
                  onPress={() => onShow(isShown ? 'none' : finding.code)}
                >
                  {isShown ? words.shown : words.show}
                </Button>
              )}
              {offer && <Button onPress={() => onMend(offer)}>{mends.offer(finding.code)}</Button>}
              {finding.grade !== 'good' && (
                <Button
                  writes
                  weight="plain"
                  aria-label={words.named(act, what)}
                  onPress={() => onMeant(finding, !isMeant)}
                >
                  {act}
                </Button>
              )}
            </div>
          </li>
        );
      })}
    </ul>
  );
}
