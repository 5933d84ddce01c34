import { useEffect, useMemo, useState } from 'react';
import { edits, type GivenArtwork, matchArtwork } from '../../src/editing';
import { type Book, ordersByDue, type Transfer, transfersByOrder } from '../../src/model';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { Field } from '../parts/Field';
import { useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { notify, openDialog } from '../store/view';
import { Window } from '../windows/Window';
import { allWordsNow, useAllWords } from '../words';
import { area } from '../words/format';
import { searchable } from './order-lines';
import { fieldsOf, takeIn } from './several-files';
import './orders.css';

/** What a file is to be: the artwork of a transfer, a new transfer of the order that the files were given to, or nothing. */
type Meant = string;
const NEW = 'new';
const NOTHING = 'nothing';

const MOST_FOUND = 20;

/** Transfers at work whose order or name holds what is looked for. */
function found(book: Book, search: string): Transfer[] {
  const wanted = searchable(search.trim());
  if (wanted === '') return [];
  const own = transfersByOrder(book);
  const transfers = ordersByDue(book).flatMap((order) =>
    (own.get(order.id) ?? []).filter(({ name }) =>
      searchable(`${order.code} ${order.name} ${name}`).includes(wanted),
    ),
  );
  return transfers.slice(0, MOST_FOUND);
}

/** Shows which transfer each image file seems to be of, over all orders, and takes what is agreed to, all in one step. */
export function MatchDialog({ files, order }: { files: readonly File[]; order: string | null }) {
  const { designs, common } = useAllWords();
  const words = designs.match;
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const [left, setLeft] = useState(files);
  const [matches] = useState(() => {
    const all = matchArtwork(
      book,
      files.map(({ name }) => name),
      order,
    );
    return new Map(files.map((file, at) => [file, all[at]]));
  });
  const [meant, setMeant] = useState<ReadonlyMap<File, Meant>>(
    () =>
      new Map(files.map((file) => [file, matches.get(file)?.transfer ?? (order === null ? NOTHING : NEW)])),
  );
  const [search, setSearch] = useState('');
  const [reading, setReading] = useState(false);
  const more = useMemo(() => found(book, search), [book, search]);
  const givenTo = order === null ? undefined : book.order[order];
  const meantBy = (file: File): Meant => meant.get(file) ?? NOTHING;
  const taken = left.filter((file) => meantBy(file) !== NOTHING);
  const unmatched = left.filter((file) => !matches.get(file)?.transfer).map(({ name }) => name);

  const take = async () => {
    setReading(true);
    const given: GivenArtwork[] = [];
    const refused: File[] = [];
    for (const file of taken) {
      const read = await takeIn(file);
      const as = meantBy(file);
      const transfer = book.transfer[as];
      if (!read) refused.push(file);
      else if (transfer) given.push({ transfer: transfer.id, artwork: read.kept });
      else if (as === NEW && givenTo)
        given.push({ order: givenTo.id, fields: fieldsOf(file.name, read.opened), artwork: read.kept });
    }
    setReading(false);
    if (given.length > 0) {
      act(edits.takeArtwork(given));
      notify('plain', allWordsNow().orders.filesTaken(given.length, ways));
    }
    if (refused.length === 0) openDialog(null);
    else setLeft(refused);
  };

  const nameOf = ({ order: of, name, width, height }: Transfer) =>
    `${name}, ${area(width, height, ways)} · ${book.order[of]?.name ?? ''}`;
  const optionsFor = (file: File) => {
    const chosen = book.transfer[meantBy(file)];
    const likely = (matches.get(file)?.likely ?? []).flatMap((id) => book.transfer[id] ?? []);
    const transfers = new Set([...(chosen ? [chosen] : []), ...more, ...likely]);
    return [
      { value: NOTHING, label: words.nothing },
      ...(givenTo ? [{ value: NEW, label: words.newIn(givenTo.name) }] : []),
      ...[...transfers].map((transfer) => ({ value: transfer.id as Meant, label: nameOf(transfer) })),
    ];
  };
  return (
    <Window title={words.title(left.length, ways)}>
      <p className="quiet">{words.hint}</p>
      {unmatched.length > 0 && <p className="care">{words.unmatched(unmatched, ways)}</p>}
      <Field label={words.find} value={search} onChange={setSearch} />
      <ul className="matches">
        {left.map((file, at) => {
          const transfer = book.transfer[meantBy(file)];
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: two files may have one name
            <li key={`${file.name} ${at}`}>
              <Picture file={file} />
              <Choice<Meant>
                label={file.name}
                value={meantBy(file)}
                options={optionsFor(file)}
                onChange={(as) => setMeant(new Map(meant).set(file, as))}
              />
              {transfer?.artwork && <p className="care small">{words.replaces(transfer.name)}</p>}
            </li>
          );
        })}
      </ul>
      <div className="actions">
        <Button onPress={() => openDialog(null)}>{common.cancel}</Button>
        <Button
          writes
          weight="primary"
          isDisabled={reading || taken.length === 0}
          onPress={() => void take()}
        >
          {reading ? words.reading : words.take(taken.length, ways)}
        </Button>
      </div>
    </Window>
  );
}

function Picture({ file }: { file: File }) {
  const [source, setSource] = useState<string | null>(null);
  useEffect(() => {
    const url = URL.createObjectURL(file);
    setSource(url);
    return () => URL.revokeObjectURL(url);
  }, [file]);
  return source ? <img src={source} alt="" loading="lazy" decoding="async" /> : <span />;
}
