import { useState } from 'react';
import { edits } from '../../src/editing';
import { type LaidRun, layRun, takenOffRoll } from '../../src/layout';
import type { Alternative } from '../../src/model';
import { makeOrBuy } from '../../src/pricing';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Form } from '../parts/Form';
import { useForm } from '../parts/fields/useForm';
import { useRunCosts } from '../store/costs';
import { settingsOrFirst, useWays } from '../store/selectors';
import { act, editContext, useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { CloseButton } from '../windows/CloseButton';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { money } from '../words/format';
import { alternativeEntry, alternativeTable, ofKind } from './alternative-form';
import { CountChart } from './CountChart';
import './costs.css';

/** A run against what others ask for the same prints. */
export function MakeOrBuyDialog({ id }: { id: string }) {
  const { makeOrBuy: words, costSheet } = useAllWords();
  const book = useShop((shop) => shop.book);
  const run = book.run[id];
  const laid = run && layRun(book, run);
  if (!laid) return null;
  return (
    <Window title={words.title(laid.name)} wide>
      {laid.copies.length === 0 ? <p>{costSheet.nothing}</p> : <Alternatives run={laid} />}
      <div className="actions">
        <Button weight="plain" onPress={() => openDialog({ kind: 'cost-sheet', run: id })}>
          {costSheet.title(laid.name)}
        </Button>
        <CloseButton />
      </div>
    </Window>
  );
}

function Alternatives({ run }: { run: LaidRun }) {
  const { makeOrBuy: words } = useAllWords();
  const { alternatives } = useShop(({ book }) => settingsOrFirst(book));
  const [edited, setEdited] = useState<Alternative | 'new' | null>(null);
  const keep = (list: readonly Alternative[]) => act(edits.editSettings({ alternatives: [...list] }));
  const save = (alternative: Alternative) => {
    const known = alternatives.some(({ id }) => id === alternative.id);
    keep(
      known
        ? alternatives.map((other) => (other.id === alternative.id ? alternative : other))
        : [...alternatives, alternative],
    );
    setEdited(null);
  };
  return (
    <>
      <p className="quiet">{words.hint}</p>
      {alternatives.length === 0 && edited === null && <p>{words.nothing}</p>}
      {alternatives.map((alternative) => (
        <Compared
          key={alternative.id}
          run={run}
          alternative={alternative}
          onEdit={() => setEdited(alternative)}
          onRemove={() => keep(alternatives.filter(({ id }) => id !== alternative.id))}
        />
      ))}
      {edited === null ? (
        <div>
          <Button onPress={() => setEdited('new')}>{words.add}</Button>
        </div>
      ) : (
        <AlternativeFields
          key={edited === 'new' ? 'new' : edited.id}
          alternative={edited === 'new' ? null : edited}
          onSave={save}
          onCancel={() => setEdited(null)}
        />
      )}
    </>
  );
}

/** One way against making it: both sums, what holds for other counts, and the two lines. */
function Compared({
  run,
  alternative,
  onEdit,
  onRemove,
}: {
  run: LaidRun;
  alternative: Alternative;
  onEdit: () => void;
  onRemove: () => void;
}) {
  const { makeOrBuy: words, common } = useAllWords();
  const ways = useWays();
  const { sheet, use } = useRunCosts(run);
  const found = makeOrBuy(sheet, use, { width: run.film.width, length: takenOffRoll(run) }, alternative);
  const { name, kind, days } = alternative;
  return (
    <section className="alternative" aria-label={name}>
      <div>
        <h3>
          {name} <span className="quiet small">{words.kinds[kind]}</span>
        </h3>
        <dl className="sums">
          <div>
            <dt>{words.made}</dt>
            <dd>{money(found.made, ways)}</dd>
          </div>
          <div>
            <dt>{words.bought}</dt>
            <dd>{money(found.bought, ways)}</dd>
          </div>
          <div>
            <dt>{words.ready}</dt>
            <dd>{words.dayCount(days, ways)}</dd>
          </div>
        </dl>
        <p className="break-even">{words.breakEven(found.breakEven, name, ways)}</p>
        <p className="quiet small">
          {kind === 'decorated' ? words.comparedDecorated : words.comparedTransfers} {words.linear}
        </p>
        <div className="actions">
          <Button weight="plain" aria-label={words.edit(name)} onPress={onEdit}>
            {words.change}
          </Button>
          <Button writes weight="plain" aria-label={words.remove(name)} onPress={onRemove}>
            {common.remove}
          </Button>
        </div>
      </div>
      <CountChart found={found} />
    </section>
  );
}

function AlternativeFields({
  alternative,
  onSave,
  onCancel,
}: {
  alternative: Alternative | null;
  onSave: (alternative: Alternative) => void;
  onCancel: () => void;
}) {
  const { makeOrBuy: words, common } = useAllWords();
  const ways = useWays();
  const form = useForm(
    alternativeTable,
    () => alternativeEntry(alternative, editContext().newId, ways),
    ways,
  );
  return (
    <Form onSubmit={() => form.submit(onSave)}>
      <Choice
        label={words.kind}
        value={form.record.kind}
        options={(['length', 'piece', 'decorated'] as const).map((value) => ({
          value,
          label: words.kinds[value],
        }))}
        onChange={(kind) => form.choose(ofKind(kind, form.opened, ways))}
      />
      {form.all()}
      <div className="actions">
        <Button onPress={onCancel}>{common.cancel}</Button>
        <Button writes type="submit" weight="primary">
          {common.save}
        </Button>
      </div>
    </Form>
  );
}
