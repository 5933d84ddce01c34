import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './cruise';

export interface Folder {
  readonly house: string;
  readonly name: string;
  /** From the ground, 0, up. */
  readonly height: number;
}

/**
 * The folders as DEVELOPERS.md draws them: of each house a block whose lines are floors, the highest first, the house's own path
 * before the first of them.
 */
export function foldersDrawn(): Folder[] {
  const page = readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8');
  const drawing = page.match(/```floors\n(.*?)```/s)?.[1];
  if (drawing === undefined) throw new Error('DEVELOPERS.md draws no floors');
  return drawing
    .trimEnd()
    .split(/\n(?=\S)/)
    .flatMap((block) => {
      const [house = ''] = block.split(' ', 1);
      const floors = block.slice(house.length).split('\n').toReversed();
      return floors.flatMap((floor, height) =>
        floor
          .trim()
          .split(/ +/)
          .map((name) => ({ house, name, height })),
      );
    });
}
