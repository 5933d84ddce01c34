import { describe, expect, it } from 'vitest';
import { reasonsBefore } from '../../src/log';
import { asId, type Spoilage } from '../../src/model';
import { NOW } from '../editing/book';

const spoiled = (stage: Spoilage['stage'], reason: string, at = NOW): Spoilage => ({
  id: asId(`${stage} ${reason}`),
  run: asId('run'),
  copy: asId('copy'),
  stage,
  garment: false,
  reason,
  changed: at,
});

describe('reasons typed before', () => {
  it('are there once each, those of the stage first, the most frequent first', () => {
    const known = [
      spoiled('press', 'crooked'),
      spoiled('print', 'banding'),
      spoiled('print', 'Head strike'),
      spoiled('print', 'head strike '),
      spoiled('press', 'scorched'),
      spoiled('press', 'Crooked'),
      spoiled('press', ''),
    ];
    expect(reasonsBefore(known, 'press')).toEqual(['crooked', 'scorched', 'Head strike', 'banding']);
    expect(reasonsBefore(known, 'print')).toEqual(['Head strike', 'banding', 'crooked', 'scorched']);
    expect(reasonsBefore([], 'cut')).toEqual([]);
  });
});
