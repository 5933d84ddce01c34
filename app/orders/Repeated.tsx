import { type Answer, type Answers, answerKey, type RepeatedRow } from '../../src/editing';
import { BoxList } from '../parts/BoxList';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { area, dueDay } from '../words/format';

/** Whether a row may take the place of what is there: not with fewer copies than are in print. */
const mayReplace = ({ row, least }: RepeatedRow): boolean => row.count >= least;

/** What is done with rows that are there already: what was said of each, or else that one which says nothing else is skipped. */
export const answered = (repeated: readonly RepeatedRow[], said: Answers): Answers =>
  Object.fromEntries(
    repeated.flatMap((each) => {
      const answer = said[answerKey(each.row)] ?? (each.isEqual ? 'skip' : null);
      return answer === null || (answer === 'replace' && !mayReplace(each))
        ? []
        : [[answerKey(each.row), answer] as const];
    }),
  );

/** Rows that say again what is in the book or in a row above, each with what there is and what it says: asked about one by one, or all at once. */
export function Repeated({
  repeated,
  answers,
  onAnswers,
}: {
  repeated: readonly RepeatedRow[];
  answers: Answers;
  onAnswers: (answers: Answers) => void;
}) {
  const { table: words } = useAllWords();
  const ways = useWays();
  const sayAll = (answer: Answer) =>
    onAnswers(
      Object.fromEntries(
        repeated.flatMap((each) =>
          answer === 'replace' && !mayReplace(each) ? [] : [[answerKey(each.row), answer]],
        ),
      ),
    );
  return (
    <section className="repeated" aria-label={words.again.title(repeated.length, ways)}>
      <h3 className="care">{words.again.title(repeated.length, ways)}</h3>
      <div className="actions start">
        <span>{words.again.forAll}</span>
        {(['skip', 'replace', 'add'] as const).map((answer) => (
          <Button key={answer} onPress={() => sayAll(answer)}>
            {words.again.all[answer]}
          </Button>
        ))}
      </div>
      <BoxList className="repeated-rows" items={repeated} keyOf={({ row }) => answerKey(row)} height={120}>
        {(each) => (
          <RepeatedLine
            each={each}
            answer={answers[answerKey(each.row)] ?? null}
            onAnswer={(answer) => {
              const { [answerKey(each.row)]: _, ...others } = answers;
              onAnswers(answer === null ? others : { ...others, [answerKey(each.row)]: answer });
            }}
          />
        )}
      </BoxList>
    </section>
  );
}

function RepeatedLine({
  each,
  answer,
  onAnswer,
}: {
  each: RepeatedRow;
  answer: Answer | null;
  onAnswer: (answer: Answer | null) => void;
}) {
  const { table: words, orders } = useAllWords();
  const ways = useWays();
  const { row, was, due, least } = each;
  const dated = (day: typeof due) => (day ? orders.dueOn(dueDay(day, ways)) : orders.noDue);
  const changed = (is: boolean) => (is ? 'changed' : undefined);
  const isRefused = !mayReplace(each);
  const options: readonly (Answer | 'ask')[] = [
    ...(answer === null ? (['ask'] as const) : []),
    'skip',
    ...(isRefused ? [] : (['replace'] as const)),
    'add',
  ];
  return (
    <>
      <div className="repeated-what">
        <p>
          <strong>{words.badRow(row.line)}</strong> {row.order} · {row.transfer},{' '}
          {area(row.width, row.height, ways)}
        </p>
        <p className="small">
          {was.row === null ? words.again.inBook(was.archived) : words.again.inRow(was.row)}{' '}
          <span className={changed(was.count !== row.count)}>{words.again.copies(was.count, ways)}</span>,{' '}
          <span className={changed(was.due !== due)}>{dated(was.due)}</span>. {words.again.here}{' '}
          <span className={changed(was.count !== row.count)}>{words.again.copies(row.count, ways)}</span>,{' '}
          <span className={changed(was.due !== due)}>{dated(due)}</span>.
        </p>
        {isRefused && <p className="problem">{words.again.inPrint(least, row.count, ways)}</p>}
      </div>
      <Choice<Answer | 'ask'>
        label={words.again.label(row.line)}
        value={answer ?? 'ask'}
        options={options.map((value) => ({ value, label: words.again.answers[value] }))}
        onChange={(said) => onAnswer(said === 'ask' ? null : said)}
      />
    </>
  );
}
