import { describe, expect, it, vi } from 'vitest';
import { followAddress, goTo, openDialog, showQuote, useView } from '../../../app/store/view';

describe('the room', () => {
  it('follows the address, and is the film where the address names none', () => {
    const place = { hash: '#/stock' };
    let heard: () => void = () => undefined;
    vi.stubGlobal('location', place);
    vi.stubGlobal('addEventListener', (event: string, listener: () => void) => {
      if (event === 'hashchange') heard = listener;
    });
    followAddress();
    expect(useView.getState().room).toBe('stock');
    goTo('press');
    expect(place.hash).toBe('#/press');
    heard();
    expect(useView.getState().room).toBe('press');
    for (const elsewhere of ['', '#/nowhere', '#stock']) {
      place.hash = elsewhere;
      heard();
      expect(useView.getState().room).toBe('film');
    }
    openDialog({ kind: 'keys' });
    showQuote('quote-1');
    expect(place.hash).toBe('#/quote');
    expect(useView.getState()).toMatchObject({ quoted: 'quote-1', dialog: null });
    vi.unstubAllGlobals();
  });
});
