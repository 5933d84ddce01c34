import { useState } from 'react';
import { Label, TextArea, TextField } from 'react-aria-components';
import { edits } from '../../src/editing';
import { readNames } from '../../src/intake';
import type { Fabric } from '../../src/units';
import { FabricChoice } from '../panels/FabricChoice';
import { Button } from '../parts/Button';
import { Field } from '../parts/Field';
import { useReader } from '../store/reader';
import { act, useShop } from '../store/shop';
import { notify, openDialog } from '../store/view';
import { Window } from '../windows/Window';
import { sizeAsTyped } from './entries';
import './orders.css';

/** A list of names and numbers, pasted: one garment and one transfer each. */
export function NamesDialog({ id }: { id: string }) {
  const reader = useReader();
  const { names: words, orders, press, common } = reader.words;
  const order = useShop(({ book }) => book.order[id]);
  const [text, setText] = useState('');
  const start =
    reader.unit === 'mm' ? { width: '250 mm', height: '300 mm' } : { width: '10 in', height: '12 in' };
  const [size, setSize] = useState(start);
  const [style, setStyle] = useState('');
  const [fabric, setFabric] = useState<Fabric | null>(null);
  if (!order) return null;
  const { rows, bad } = readNames(text);
  const width = sizeAsTyped.read(size.width, reader);
  const height = sizeAsTyped.read(size.height, reader);
  const add = () => {
    if (!width.ok || !height.ok || rows.length === 0) return;
    act(
      edits.addNames(order.id, rows, {
        width: width.value.length,
        height: height.value.length,
        typed: { width: width.value.typed, height: height.value.typed },
        style: style.trim(),
        fabric,
      }),
    );
    notify('plain', words.added(rows.length, reader));
    openDialog(null);
  };
  return (
    <Window title={words.title(order.name)}>
      <p className="quiet">{words.hint}</p>
      <TextField className="field table-text" value={text} onChange={setText} autoFocus>
        <Label>{words.list}</Label>
        <TextArea spellCheck="false" />
      </TextField>
      <div className="fields">
        <Field
          label={orders.width}
          value={size.width}
          onChange={(value) => setSize({ ...size, width: value })}
          problem={width.ok ? null : width.problem}
        />
        <Field
          label={orders.height}
          value={size.height}
          onChange={(value) => setSize({ ...size, height: value })}
          problem={height.ok ? null : height.problem}
        />
        <Field label={words.style} value={style} onChange={setStyle} />
        <FabricChoice label={press.fabric} fabric={fabric} onTell={setFabric} />
      </div>
      <ul className="small">
        {rows.slice(0, 12).map(({ line, name, number, size: garment }) => (
          <li key={line}>{words.row(name, number, garment)}</li>
        ))}
        {rows.length > 12 && <li className="quiet">{words.more(rows.length - 12, reader)}</li>}
        {bad.map((line) => (
          <li key={line} className="care">
            {words.bad(line)}
          </li>
        ))}
      </ul>
      <div className="actions">
        <Button onPress={() => openDialog(null)}>{common.cancel}</Button>
        <Button
          writes
          weight="primary"
          isDisabled={rows.length === 0 || !width.ok || !height.ok}
          onPress={add}
        >
          {words.add(rows.length, reader)}
        </Button>
      </div>
    </Window>
  );
}
