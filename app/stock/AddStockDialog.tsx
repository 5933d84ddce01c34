import { useState } from 'react';
import { edits } from '../../src/editing';
import type { Blank, Film } from '../../src/model';
import { leftOfFilm, unitOf } from '../../src/stock';
import { um } from '../../src/units';
import { Choice } from '../parts/Choice';
import { DateField } from '../parts/DateField';
import { Form } from '../parts/Form';
import { useForm } from '../parts/fields/useForm';
import { useReader } from '../store/reader';
import { act, useShop } from '../store/shop';
import { notify, openDialog } from '../store/view';
import { FormActions } from '../windows/FormActions';
import { Window } from '../windows/Window';
import { type Added, addEntry, addTable, type Garments, nothingOf, type Things } from './add-form';
import type { Box } from './box-form';

const kinds = ['film', 'colour', 'white', 'powder', 'blank'] as const;
type Kind = (typeof kinds)[number];

const inkAndPowder = { colour: 'volume', white: 'volume', powder: 'mass', blank: 'pieces' } as const;

/** A film with another amount left. */
const filledTo = (film: Film, name: string, amount: number): Film =>
  film.kind === 'roll'
    ? { ...film, name, lengthLeft: um(amount), noPrint: [] }
    : { ...film, name, sheetsLeft: amount };

/** Something new in stock: film like one that is there, ink, powder, or garments by size. */
export function AddStockDialog({ garment }: { garment: Pick<Blank, 'style' | 'colour' | 'size'> | null }) {
  const reader = useReader();
  const { stock: words, common } = reader.words;
  const book = useShop((shop) => shop.book);
  const films = Object.values(book.film).filter(({ archived }) => !archived);
  const [kind, setKind] = useState<Kind>(garment ? 'blank' : 'film');
  const [like, setLike] = useState<string>(() => films[0]?.id ?? '');
  const film = book.film[like];
  const unit = kind === 'film' ? (film ? unitOf(film) : 'length') : inkAndPowder[kind];
  const taken = [...Object.values(book.film), ...Object.values(book.item)].flatMap((each) =>
    'name' in each && !each.archived ? [each.name] : [],
  );
  const form = useForm(addTable(unit, new Set(taken)), () => addEntry(garment), reader);
  const { box } = form.record;
  const note = (noted: Partial<Box>) => form.choose({ ...form.record, box: { ...box, ...noted } });

  const saveGarments = ({ style, colour, sizes, box }: Garments) => {
    const named = (size: string) => [style, colour, size].filter((part) => part !== '').join(', ');
    const blanks = sizes.map(({ size, count }) => ({
      fields: { kind: 'blank' as const, name: named(size), style, colour, shade: null, size, ...box },
      amount: count,
    }));
    act(edits.addSupplies(blanks));
  };
  const saveThings = ({ name, amount, box }: Things) => {
    if (kind === 'film') {
      if (film) act(edits.buyFilm(filledTo(film, name, amount), box));
    } else if (kind !== 'blank') act(edits.addSupplies([{ fields: { kind, name, ...box }, amount }]));
  };
  const save = (added: Added) => {
    if (added.of === 'garments') saveGarments(added);
    else saveThings(added);
    const name = added.of === 'garments' ? `${added.style} ${added.colour}`.trim() : added.name;
    notify('plain', words.added(name));
    openDialog(null);
  };
  return (
    <Window title={words.addTitle}>
      <Form onSubmit={() => form.submit(save)}>
        <Choice
          label={words.kind}
          value={kind}
          options={kinds.map((value) => ({ value, label: words.kindNames[value] }))}
          onChange={(value) => {
            setKind(value);
            const record = value === 'blank' ? nothingOf.garments : nothingOf.things;
            form.begin({ record: { ...record, box }, typed: form.entry.typed });
          }}
        />
        {kind === 'film' && (
          <>
            <Choice
              label={words.like}
              value={like}
              options={films.map((each) => ({
                value: each.id as string,
                label: `${each.name} · ${words.amount(leftOfFilm(each), unitOf(each), reader)}`,
              }))}
              onChange={setLike}
            />
            <p className="wide-row quiet small">{words.likeHint}</p>
          </>
        )}
        {form.fields('style', 'colour', 'sizes', 'name', 'amount')}
        {kind !== 'blank' && (
          <>
            {form.field('lot')}
            <DateField
              label={words.bestBeforeLabel}
              value={box.bestBefore}
              onChange={(bestBefore) => note({ bestBefore })}
            />
            <DateField label={words.openedLabel} value={box.opened} onChange={(opened) => note({ opened })} />
          </>
        )}
        {form.fields('reorder', 'order')}
        {(kind === 'colour' || kind === 'white') && (
          <p className="wide-row caution small">{words.inkCaution}</p>
        )}
        {kind === 'powder' && <p className="wide-row caution small">{words.powderCaution}</p>}
        <FormActions save={common.add} />
      </Form>
    </Window>
  );
}
