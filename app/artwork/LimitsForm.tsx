import type { Limits } from '../../src/artwork';
import { edits } from '../../src/editing';
import { Button } from '../parts/Button';
import { Form } from '../parts/Form';
import { useForm } from '../parts/fields/useForm';
import { useWays } from '../store/selectors';
import { act } from '../store/shop';
import { useAllWords } from '../words';
import { limitsTable } from './limits-form';

/** The widths a shop trusts its film with; all artwork is looked at again when they change. */
export function LimitsForm({ limits }: { limits: Limits }) {
  const { common, artwork: words } = useAllWords();
  const form = useForm(limitsTable, () => ({ record: limits, typed: {} }), useWays());
  const save = (read: Limits) => {
    act(edits.editSettings({ limits: read }));
    form.begin({ record: read, typed: {} });
  };
  return (
    <details className="limits">
      <summary>{words.limits}</summary>
      <p className="hint">{words.limitsHint}</p>
      <Form onSubmit={() => form.submit(save)}>
        {form.all()}
        <div className="actions">
          <Button writes type="submit">
            {common.save}
          </Button>
        </div>
      </Form>
    </details>
  );
}
