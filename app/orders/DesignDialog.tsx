import { useState } from 'react';
import { edits, type NewSize } from '../../src/editing';
import { MOST_COPIES } from '../../src/intake';
import { type Book, type DesignSize, designWidths, type Id, type Transfer } from '../../src/model';
import { keysOf, type Micrometres, um } from '../../src/units';
import { Form } from '../parts/Form';
import { optional } from '../parts/fields/codec';
import { whole } from '../parts/fields/numbers';
import { useReader } from '../store/reader';
import { act, useShop } from '../store/shop';
import { type Design, notify, openDialog } from '../store/view';
import { FormActions } from '../windows/FormActions';
import { Window } from '../windows/Window';
import { area, typedLength, whole as wholeText } from '../words/format';
import { sizeAsTyped } from './entries';
import './orders.css';
import './design.css';

const OWN = 'own';
type Line = DesignSize | typeof OWN;

const copiesOfSize = optional(
  whole(0, MOST_COPIES, ({ designs }, reader) => designs.countProblem(wholeText(MOST_COPIES, reader))),
);

/** The transfers of an order that have an image already. */
const withArtwork = (book: Book, order: string, artwork: string | undefined): Transfer[] =>
  Object.values(book.transfer).filter(
    (transfer) => artwork !== undefined && transfer.order === order && transfer.artwork === artwork,
  );

/** One design at several sizes: widths and copies, all of them added at once. */
export function DesignDialog({ order, design }: { order: string; design: Design }) {
  const reader = useReader();
  const { designs: words } = reader.words;
  const book = useShop((shop) => shop.book);
  const known = withArtwork(book, order, design.artwork?.id);
  const ratio = design.size.height / design.size.width;
  const isNew = known.length === 0;
  const inUnit = (length: Micrometres) => `${typedLength(length, reader)} ${reader.unit}`;
  const lines: Line[] = isNew ? [OWN, ...keysOf(designWidths)] : keysOf(designWidths);
  const [widths, setWidths] = useState(() => ({
    [OWN]: inUnit(design.size.width),
    ...(Object.fromEntries(
      Object.entries(designWidths).map(([size, width]) => [size, inUnit(width)]),
    ) as Record<DesignSize, string>),
  }));
  const [copies, setCopies] = useState<Readonly<Record<string, string>>>(isNew ? { [OWN]: '1' } : {});
  const [tried, setTried] = useState(false);
  const readCopies = (key: string) => copiesOfSize.read(copies[key] ?? '', reader);
  /** Nothing typed is none; `null` if it is no number of copies. */
  const countOf = (key: string) => {
    const read = readCopies(key);
    return read.ok ? (read.value ?? 0) : null;
  };
  const keys = [...known.map(({ id }) => id as string), ...lines];
  const total = keys.reduce((sum, key) => sum + (countOf(key) ?? 0), 0);
  const nameOf = (line: Line) => (line === OWN ? words.own : words.sizes[line]);

  const add = () => {
    setTried(true);
    const sizes: NewSize[] = [];
    for (const line of lines) {
      const count = countOf(line);
      const width = sizeAsTyped.read(widths[line], reader);
      if (count === null || (count > 0 && !width.ok)) return;
      if (count === 0 || !width.ok) continue;
      const { length, typed } = width.value;
      const height = line === OWN && length === design.size.width ? design.size.height : um(length * ratio);
      sizes.push({
        name: line === OWN ? design.name : `${design.name}, ${words.sizes[line]}`,
        width: length,
        height,
        typed: { width: typed, height: inUnit(height) },
        count,
      });
    }
    const more = known.map(({ id }) => ({ transfer: id, count: countOf(id) ?? 0 }));
    if (total === 0 || known.some(({ id }) => countOf(id) === null)) return;
    const { artwork, shade } = design;
    act(edits.addDesign(order as Id<'order'>, { artwork, shade, sizes, more }));
    notify('plain', words.added(design.name, total, reader));
    openDialog(null);
  };

  const countField = (key: string, label: string) => (
    <div className="cell">
      <input
        aria-label={label}
        aria-invalid={countOf(key) === null}
        value={copies[key] ?? ''}
        placeholder="0"
        inputMode="numeric"
        autoComplete="off"
        onChange={(event) => setCopies({ ...copies, [key]: event.target.value })}
      />
    </div>
  );
  const countProblem = (key: string) => {
    const read = readCopies(key);
    return !read.ok && <p className="problem">{read.problem}</p>;
  };

  return (
    <Window title={words.title(design.name)}>
      <Form onSubmit={add}>
        {!isNew && (
          <section className="design-known">
            <h3>{words.known}</h3>
            {known.map((transfer) => (
              <div key={transfer.id} className="design-row">
                <span>
                  {transfer.name}{' '}
                  <span className="quiet small">
                    {words.has(
                      area(transfer.width, transfer.height, reader),
                      Object.values(book.copy).filter((copy) => copy.transfer === transfer.id).length,
                      reader,
                    )}
                  </span>
                </span>
                {countField(transfer.id, words.more(transfer.name))}
                {countProblem(transfer.id)}
              </div>
            ))}
          </section>
        )}
        <section className="design-sizes">
          <p className="quiet">{words.hint}</p>
          <div className="design-size grid-titles" aria-hidden="true">
            <span>{words.size}</span>
            <span>{words.width}</span>
            <span>{words.height}</span>
            <span>{words.copies}</span>
          </div>
          {lines.map((line) => {
            const width = sizeAsTyped.read(widths[line], reader);
            const count = countOf(line) ?? 0;
            return (
              <div key={line} className="design-size">
                <span>{nameOf(line)}</span>
                <div className="cell">
                  <input
                    aria-label={words.widthOf(nameOf(line))}
                    aria-invalid={!width.ok && (tried || count > 0)}
                    value={widths[line]}
                    inputMode="decimal"
                    autoComplete="off"
                    onChange={(event) => setWidths({ ...widths, [line]: event.target.value })}
                  />
                </div>
                <span className="quiet">{width.ok ? inUnit(um(width.value.length * ratio)) : ''}</span>
                {countField(line, words.copiesOf(nameOf(line)))}
                {!width.ok && (tried || count > 0) && <p className="problem">{width.problem}</p>}
                {countProblem(line)}
              </div>
            );
          })}
        </section>
        <FormActions save={words.add(total, reader)} isDisabled={total === 0} />
      </Form>
    </Window>
  );
}
