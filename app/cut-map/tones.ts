import type { Tone } from '../../src/output/cut-map';

export const tones: Record<Tone, string> = { ink: '#000', quiet: '#666', faint: '#a6a6a6' };
