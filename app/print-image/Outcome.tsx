import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { area, pixelSize } from '../words/format';
import type { NamedImage } from './printing';
import { bytesOf, type Sources } from './sources';

/** Files that are named one by one; of more the rest is counted. */
const LISTED = 4;

/** About how many bytes all images take, by how densely the files of their artwork are packed. */
function bytesOfAll(images: readonly NamedImage[], sources: NonNullable<Sources>): number {
  let bytes = 0;
  for (const { artwork, width, height } of images.flatMap(({ image }) => image.copies)) {
    const source = artwork === null ? undefined : sources.get(artwork);
    if (source) bytes += bytesOf(source, width * height);
  }
  return bytes;
}

/** The files that will be written, how large they are on film and, about, on the disk. */
export function Outcome({ images, sources }: { images: readonly NamedImage[]; sources: Sources }) {
  const { printImage: words } = useAllWords();
  const ways = useWays();
  return (
    <div className="image-files" role="status">
      <ul>
        {images.slice(0, LISTED).map(({ name, image }) => (
          <li key={name}>
            <strong>{name}</strong>{' '}
            <span className="quiet">
              {words.file(
                pixelSize(image.width, image.height, ways),
                area(image.film.width, image.film.length, ways),
              )}
            </span>
          </li>
        ))}
        {images.length > LISTED && <li className="quiet">{words.more(images.length - LISTED, ways)}</li>}
      </ul>
      <p className="quiet small">
        {sources === null ? words.loading : words.about(bytesOfAll(images, sources), ways)}
      </p>
    </div>
  );
}
