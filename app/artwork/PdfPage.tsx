import { useEffect, useState } from 'react';
import { openArtwork, type PdfPages, pdfPages } from '../../src/artwork/browser';
import { edits } from '../../src/editing';
import type { Artwork, Transfer } from '../../src/model';
import { Choice } from '../parts/Choice';
import { keepArtwork, loadArtworkFile } from '../store/artwork';
import { sayNotRead } from '../store/failures';
import { useWays } from '../store/selectors';
import { act, mayWrite, useShop } from '../store/shop';
import { notify } from '../store/view';
import { allWordsNow, useAllWords, wordsNow } from '../words';
import { sizeWith } from './take-mended';

/** What of another page is printed, in pixels as large as those of the page before. */
function inPixelsOf(
  before: Artwork,
  { trim, density }: Pick<Artwork, 'trim' | 'density'>,
): Pick<Artwork, 'trim'> {
  if (!trim || !density || !before.density) return { trim };
  const [across, down] = [before.density.x / density.x, before.density.y / density.y];
  return { trim: { ...trim, width: trim.width * across, height: trim.height * down } };
}

/** Gives a transfer another page of its PDF, at the scale of the page before. */
async function takePage(transferId: string, artwork: Artwork, page: number): Promise<void> {
  if (!mayWrite()) return;
  const file = await loadArtworkFile(artwork.id).catch(() => null);
  if (!file) return notify('error', allWordsNow().artwork.pictureMissing);
  try {
    const opened = await openArtwork(new File([file], artwork.fileName), page);
    if (!opened.ok) {
      return notify('error', allWordsNow().orders.artworkRefused(artwork.fileName, opened.problem));
    }
    const kept = await keepArtwork(opened.value);
    if (!kept.ok) return notify('error', wordsNow().storage[kept.problem.code]);
    const transfer = useShop.getState().book.transfer[transferId];
    if (transfer?.artwork !== artwork.id) return;
    act(
      edits.setMadeArtwork(
        transferId,
        kept.value,
        sizeWith(transfer, artwork, inPixelsOf(artwork, kept.value)),
      ),
    );
  } catch (error) {
    sayNotRead(artwork.fileName, error);
  }
}

/** Which page of a PDF is the artwork, where it has more than one. */
export function PdfPage({ transfer, artwork }: { transfer: Transfer; artwork: Artwork }) {
  const { artwork: words } = useAllWords();
  const ways = useWays();
  const [pages, setPages] = useState<PdfPages | null>(null);
  const [reading, setReading] = useState(false);
  useEffect(() => {
    let current = true;
    const look = async () => {
      const file = await loadArtworkFile(artwork.id).catch(() => null);
      const found = file && (await pdfPages(file).catch(() => null));
      if (current) setPages(found);
    };
    void look();
    return () => {
      current = false;
    };
  }, [artwork.id]);
  if (!pages || pages.of < 2) return null;
  const numbers = Array.from({ length: pages.of }, (_, index) => String(index + 1));
  return (
    <Choice
      writes
      label={words.page}
      value={String(pages.number)}
      options={numbers.map((number) => ({
        value: number,
        label: words.pageOf(Number(number), pages.of, ways),
      }))}
      onChange={(number) => {
        if (reading) return;
        setReading(true);
        void takePage(transfer.id, artwork, Number(number)).finally(() => setReading(false));
      }}
    />
  );
}
