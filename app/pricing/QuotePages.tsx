import { type RefObject, useLayoutEffect, useRef, useState } from 'react';
import { type PriceLine, type Quote, quoteNumber } from '../../src/model';
import { pagesOf } from '../../src/output/paging';
import { MarkPicture } from '../panels/shop-mark/ShopMark';
import { settingsOrFirst } from '../store/selectors';
import { useShop } from '../store/shop';
import { useWordsOf, type Words } from '../words';
import { dayOf, money, type Ways, whole } from '../words/format';
import { PriceTable } from './PriceLines';

/** Lines that fit a page at its usual size; more are set smaller. */
const MANY = 16;

/** What a quote is made up of, in the order of the paper. */
type Part =
  | { readonly kind: 'line'; readonly line: PriceLine }
  | { readonly kind: 'sums' }
  | { readonly kind: 'deposit'; readonly text: string }
  | { readonly kind: 'note'; readonly line: number; readonly text: string };

interface Writing {
  readonly quote: Quote;
  readonly paper: string;
  readonly words: Words;
  readonly ways: Ways;
}

function partsOf({ content, notes }: Quote, words: Words, ways: Ways): Part[] {
  const parts: Part[] = (content?.lines ?? []).map((line) => ({ kind: 'line', line }));
  parts.push({ kind: 'sums' });
  if (content && content.deposit > 0) {
    parts.push({ kind: 'deposit', text: words.quote.deposit(money(content.deposit, ways)) });
  }
  if (notes !== '') {
    parts.push(...notes.split('\n').map((text, line) => ({ kind: 'note', line, text }) as const));
  }
  return parts;
}

/** What the customer reads, on as many pages as it takes; nothing on it tells what anything costs the shop. */
export function QuotePages({ quote, paper }: { quote: Quote; paper: string }) {
  const words = useWordsOf(quote.language);
  // Amounts are all that is told in figures, so no unit of lengths counts.
  const ways: Ways = { unit: 'mm', currency: quote.currency, locale: quote.locale };
  const writing = { quote, paper, words, ways };
  const parts = partsOf(quote, words, ways);
  const trial = useRef<HTMLDivElement>(null);
  const starts = useStarts(trial, parts, writing);
  const pages = starts.map((from, index) => parts.slice(from, starts[index + 1]));
  return (
    <>
      <div ref={trial} className="quote-trial" aria-hidden="true" inert>
        <Page {...writing} parts={parts} number={1} of={2} />
        <Page {...writing} parts={parts.slice(0, 1)} number={2} of={2} />
      </div>
      <div className="quote-pages" data-testid="quote" lang={quote.language}>
        {pages.map((own, index) => (
          <Page key={starts[index]} {...writing} parts={own} number={index + 1} of={pages.length} />
        ))}
      </div>
    </>
  );
}

/** Where each page begins, as the browser sets the quote on this paper. */
function useStarts(
  trial: RefObject<HTMLDivElement | null>,
  parts: readonly Part[],
  { quote, paper, words }: Writing,
) {
  const [starts, setStarts] = useState<readonly number[]>([0]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the parts follow from the quote and its words
  useLayoutEffect(() => {
    const place = () => trial.current && setStarts(startsOf(trial.current, parts));
    place();
    // What the lines take is told by the font, which may come later.
    void document.fonts.ready.then(place);
  }, [quote, paper, words]);
  return starts.filter((from) => from < parts.length);
}

const bottomOf = (element: Element | null | undefined): number =>
  element?.getBoundingClientRect().bottom ?? 0;

function startsOf(trial: HTMLElement, parts: readonly Part[]): number[] {
  const [first, later] = trial.children;
  if (!first || !later) return [0];
  const topOf = (page: Element, what: string) =>
    (page.querySelector(what)?.getBoundingClientRect().top ?? 0) - page.getBoundingClientRect().top;
  // The first page holds all parts here, so where a page ends is told by the second.
  const end = topOf(later, '.quote-foot') - Number.parseFloat(getComputedStyle(later).rowGap);
  const roomOf = (page: Element) => end - topOf(page, '.price-lines');
  const heading = first.querySelector('thead')?.getBoundingClientRect().height ?? 0;
  const all = first.querySelectorAll('[data-line], .price-sums, .quote-deposit, .quote-notes p');
  let above = bottomOf(first.querySelector('thead'));
  const blocks = parts.map(({ kind }, index) => {
    const below = bottomOf(all[index]);
    const height = below - above;
    above = below;
    return {
      height,
      inTable: kind === 'line' || kind === 'sums',
      // What ends the quote stays together, the last line with it, so that the total is on the last page.
      withBefore: kind !== 'line',
    };
  });
  return pagesOf(blocks, { first: roomOf(first), later: roomOf(later), heading });
}

/** One page, from the shop's head to its number. */
function Page({
  quote,
  paper,
  words,
  ways,
  parts,
  number,
  of,
}: Writing & { parts: readonly Part[]; number: number; of: number }) {
  const { quote: told } = words;
  const lines = parts.flatMap((part) => (part.kind === 'line' ? [part.line] : []));
  const hasSums = parts.some(({ kind }) => kind === 'sums');
  const deposit = parts.find((part) => part.kind === 'deposit');
  const notes = parts.filter((part) => part.kind === 'note');
  const many = (quote.content?.lines.length ?? 0) > MANY;
  const sums = {
    subtotal: quote.total,
    tax: null,
    deposit: quote.total,
    ...quote.content,
    total: quote.total,
  };
  return (
    <article className={many ? 'card-page quote many' : 'card-page quote'} data-paper={paper}>
      {number === 1 ? (
        <Head quote={quote} words={words} ways={ways} />
      ) : (
        <p className="quote-head">
          <strong>{[quote.from.name, quote.for.name].filter(Boolean).join(' · ')}</strong>
          {told.heading(quoteNumber(quote))}
        </p>
      )}
      {(lines.length > 0 || hasSums) && (
        <PriceTable lines={lines} sums={hasSums ? sums : null} words={words} ways={ways} />
      )}
      {deposit && <p className="quote-deposit">{deposit.text}</p>}
      {notes.length > 0 && (
        <section className="quote-notes">
          {notes[0]?.line === 0 && <h3>{told.notes}</h3>}
          {notes.map(({ line, text }) => (
            <p key={line}>{text}</p>
          ))}
        </section>
      )}
      {of > 1 && <footer className="quote-foot">{told.page(whole(number, ways), whole(of, ways))}</footer>}
    </article>
  );
}

/** Who it comes from, what it is and for whom. */
function Head({ quote, words: { quote: words }, ways }: Pick<Writing, 'quote' | 'words' | 'ways'>) {
  const { mark, letterhead } = useShop(({ book }) => settingsOrFirst(book));
  return (
    <>
      <header className="quote-from">
        {quote.from.name === letterhead.name && <MarkPicture mark={mark} />}
        <div>
          <strong>{quote.from.name}</strong>
          <p>{quote.from.address}</p>
        </div>
      </header>
      <div className="quote-head">
        <h2>{words.heading(quoteNumber(quote))}</h2>
        <p>
          {words.date(dayOf(quote.on, ways))}
          <br />
          {words.until(dayOf(quote.until, ways))}
        </p>
      </div>
      <p className="quote-for">
        <span>{words.for}</span>
        <strong>{quote.for.name}</strong>
        {quote.for.contact}
      </p>
    </>
  );
}
