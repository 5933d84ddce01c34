import { describe, expect, it } from 'vitest';
import { type Chord, matches } from '../../app/commands/command';

const press = (
  key: string,
  held: Partial<Record<'ctrlKey' | 'metaKey' | 'shiftKey' | 'altKey', boolean>> = {},
) => ({ key, ctrlKey: false, metaKey: false, shiftKey: false, altKey: false, ...held }) as KeyboardEvent;

describe('a key', () => {
  it.each<[Chord, KeyboardEvent, boolean]>([
    [{ key: 'r' }, press('r'), true],
    [{ key: 'r' }, press('R', { shiftKey: true }), false],
    [{ key: 'r' }, press('r', { ctrlKey: true }), false],
    [{ key: 'z', mod: true }, press('z', { ctrlKey: true }), true],
    [{ key: 'z', mod: true }, press('z', { metaKey: true }), true],
    [{ key: 'z', mod: true }, press('Z', { ctrlKey: true, shiftKey: true }), false],
    [{ key: 'z', mod: true, shift: true }, press('Z', { ctrlKey: true, shiftKey: true }), true],
    [{ key: 'ArrowUp', shift: true }, press('ArrowUp', { shiftKey: true }), true],
    [{ key: 'ArrowUp' }, press('ArrowUp', { shiftKey: true }), false],
    [{ key: 'ArrowUp', alt: true }, press('ArrowUp', { altKey: true }), true],
    // Where a keyboard has these signs is its own matter.
    [{ key: '?' }, press('?', { shiftKey: true }), true],
    [{ key: '+' }, press('+'), true],
  ])('%j is heard', (chord, event, heard) => {
    expect(matches(chord, event)).toBe(heard);
  });
});
