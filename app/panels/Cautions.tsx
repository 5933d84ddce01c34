import { useAllWords } from '../words';

/** Sentences of what can hurt; where powder flies its limits are a press of a button away. */
export function Cautions({
  cautions,
  dusty,
  small = false,
}: {
  cautions: readonly string[];
  dusty: boolean;
  small?: boolean;
}) {
  const { press: words } = useAllWords();
  return (
    <>
      {cautions.map((caution) => (
        <p key={caution} className={small ? 'caution small' : 'caution'}>
          {caution}
        </p>
      ))}
      {dusty && (
        <details className="small">
          <summary>{words.dustLimits}</summary>
          <p>{words.dust}</p>
        </details>
      )}
    </>
  );
}
