import { useEffect, useState } from 'react';
import { Button as AriaButton, FileTrigger } from 'react-aria-components';
import type { Transfer } from '../../src/model';
import { freeLater } from '../files/object-url';
import { useHeld } from '../parts/held';
import { loadThumbnail } from '../store/artwork';
import { useAllWords } from '../words';
import { artworkTypes, giveArtwork, useReading } from './artwork';

/** A transfer's thumbnail; pressed, it asks for a file. */
export function ArtworkCell({ transfer }: { transfer: Transfer }) {
  const { orders: words } = useAllWords();
  const source = useThumbnail(transfer.artwork);
  const { isHeld, reason } = useHeld(true);
  const reading = useReading((state) => state.transfers.has(transfer.id));
  return (
    <FileTrigger
      acceptedFileTypes={artworkTypes}
      onSelect={(files) => files?.[0] && void giveArtwork(transfer.id, files[0])}
    >
      <AriaButton
        className={source ? 'artwork has-picture' : 'artwork'}
        aria-label={words.addArtwork(transfer.name)}
        isDisabled={isHeld || reading}
        {...reason}
      >
        {reading ? '…' : source ? <img src={source} alt="" /> : '+'}
      </AriaButton>
    </FileTrigger>
  );
}

function useThumbnail(artwork: string | null): string | null {
  const [source, setSource] = useState<string | null>(null);
  useEffect(() => {
    let url: string | null = null;
    let current = true;
    setSource(null);
    if (artwork !== null) {
      void loadThumbnail(artwork)
        .catch(() => null)
        .then((blob) => {
          if (!blob || !current) return;
          url = URL.createObjectURL(blob);
          setSource(url);
        });
    }
    return () => {
      current = false;
      if (url) freeLater(url);
    };
  }, [artwork]);
  return source;
}
