import { useState } from 'react';
import { edits } from '../../src/editing';
import type { Blank, Film } from '../../src/model';
import { leftOfFilm, unitOf } from '../../src/stock';
import { type LocalDate, um } from '../../src/units';
import { Choice } from '../parts/Choice';
import { DateField } from '../parts/DateField';
import { Field } from '../parts/Field';
import { Form } from '../parts/Form';
import { optional } from '../parts/fields/codec';
import { useReader } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { notify, openDialog } from '../store/view';
import { FormActions } from '../windows/FormActions';
import { Window } from '../windows/Window';
import { amountIn, unitLabel } from './amounts';

const kinds = ['film', 'colour', 'white', 'powder', 'blank'] as const;
type Kind = (typeof kinds)[number];

const inkAndPowder = { colour: 'volume', white: 'volume', powder: 'mass', blank: 'pieces' } as const;

/** Sizes with their counts: `S 10, M 20, L 15`; `null` where one cannot be read. */
function readSizes(text: string): readonly { readonly size: string; readonly count: number }[] | null {
  const parts = text.split(/[,;\n]+/).filter((part) => part.trim() !== '');
  const sizes = parts.map((part) => /^\s*(\S(?:.*\S)?)\s*[:=x× ]\s*(\d{1,5})\s*$/.exec(part));
  if (sizes.length === 0 || sizes.some((match) => match === null)) return null;
  return sizes.flatMap((match) => (match?.[1] ? [{ size: match[1], count: Number(match[2]) }] : []));
}

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
  const [form, setForm] = useState({
    name: '',
    amount: '',
    style: garment?.style ?? '',
    colour: garment?.colour ?? '',
    sizes: garment ? `${garment.size} ` : '',
    lot: '',
    reorder: '',
    order: '',
  });
  const [bestBefore, setBestBefore] = useState<LocalDate | null>(null);
  const [opened, setOpened] = useState<LocalDate | null>(null);
  const [problems, setProblems] = useState<Partial<Record<keyof typeof form, string>>>({});
  const film = book.film[like];
  const unit = kind === 'film' ? (film ? unitOf(film) : 'length') : inkAndPowder[kind];
  const blankKind = kind === 'blank';

  const save = () => {
    const found: typeof problems = {};
    const name = form.name.trim();
    if (!blankKind && name === '') found.name = words.nameEmpty;
    const all = [...Object.values(book.film), ...Object.values(book.item)];
    if (!blankKind && all.some((each) => 'name' in each && !each.archived && each.name === name))
      found.name = words.nameTaken;
    const amount = blankKind ? null : amountIn(unit).read(form.amount, reader);
    if (amount && !amount.ok) found.amount = amount.problem;
    else if (amount?.ok && amount.value <= 0) found.amount = words.aboveZero;
    const sizes = readSizes(form.sizes);
    if (blankKind && form.style.trim() === '') found.style = words.styleEmpty;
    if (blankKind && sizes === null) found.sizes = words.sizesProblem;
    const reorder = optional(amountIn(unit)).read(form.reorder, reader);
    if (!reorder.ok) found.reorder = reorder.problem;
    setProblems(found);
    if (Object.keys(found).length > 0) return;
    const box = {
      lot: form.lot.trim(),
      bestBefore,
      opened,
      reorder: reorder.ok ? reorder.value : null,
      order: form.order.trim(),
    };
    const style = form.style.trim();
    const colour = form.colour.trim();
    if (kind === 'film') {
      if (film && amount?.ok) act(edits.buyFilm(filledTo(film, name, amount.value), box));
    } else if (kind === 'blank') {
      const named = (size: string) => [style, colour, size].filter((part) => part !== '').join(', ');
      const blanks = (sizes ?? []).map(({ size, count }) => ({
        fields: { kind, name: named(size), style, colour, shade: null, size, ...box },
        amount: count,
      }));
      act(edits.addSupplies(blanks));
    } else if (amount?.ok) act(edits.addSupplies([{ fields: { kind, name, ...box }, amount: amount.value }]));
    notify('plain', words.added(blankKind ? `${style} ${colour}`.trim() : name));
    openDialog(null);
  };
  const field = (key: keyof typeof form, label: string, hint?: string) => (
    <Field
      key={key}
      label={label}
      value={form[key]}
      onChange={(value) => setForm({ ...form, [key]: value })}
      problem={problems[key] ?? null}
      {...(hint ? { hint } : {})}
      {...(key === 'amount' || key === 'reorder' ? { inputMode: 'decimal' as const } : {})}
    />
  );
  return (
    <Window title={words.addTitle}>
      <Form onSubmit={save}>
        <Choice
          label={words.kind}
          value={kind}
          options={kinds.map((value) => ({ value, label: words.kindNames[value] }))}
          onChange={(value) => {
            setKind(value);
            setProblems({});
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
        {blankKind ? (
          <>
            {field('style', words.style)}
            {field('colour', words.colour)}
            {field('sizes', words.sizes, words.sizesHint)}
          </>
        ) : (
          <>
            {field('name', words.name)}
            {field('amount', words.howMuch[unit](unitLabel(unit, reader)))}
            {field('lot', words.lotLabel)}
            <DateField label={words.bestBeforeLabel} value={bestBefore} onChange={setBestBefore} />
            <DateField label={words.openedLabel} value={opened} onChange={setOpened} />
          </>
        )}
        {field('reorder', words.reorderLabel(unitLabel(unit, reader)))}
        {field('order', words.orderLabel)}
        {(kind === 'colour' || kind === 'white') && (
          <p className="wide-row caution small">{words.inkCaution}</p>
        )}
        {kind === 'powder' && <p className="wide-row caution small">{words.powderCaution}</p>}
        <FormActions save={common.add} />
      </Form>
    </Window>
  );
}
