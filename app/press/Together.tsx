import { useState } from 'react';
import type { Batch, Job } from '../../src/pressing';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';

/** What tells a batch from all others. */
function nameOf(batch: Batch): string {
  switch (batch.by) {
    case 'kind':
      return batch.kind;
    case 'span':
      return `span ${batch.span}`;
    case 'order':
      return `order ${batch.order.id}`;
  }
}

/** A whole stage, span or order ticked at once. */
export function Together({
  batches,
  onDone,
}: {
  batches: readonly Batch[];
  onDone: (jobs: readonly Job[]) => void;
}) {
  const { press: words } = useAllWords();
  const ways = useWays();
  const [name, setName] = useState<string | null>(null);
  const chosen = batches.find((batch) => nameOf(batch) === name) ?? batches[0];
  if (!chosen) return null;
  return (
    <div className="together">
      <Choice
        label={words.together}
        value={nameOf(chosen)}
        options={batches.map((batch) => ({ value: nameOf(batch), label: words.batch(batch, ways) }))}
        onChange={setName}
      />
      <Button writes onPress={() => onDone(chosen.jobs)}>
        {words.togetherDone}
      </Button>
    </div>
  );
}
