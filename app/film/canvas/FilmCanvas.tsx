import type { Context as KonvaContext } from 'konva/lib/Context';
import { memo, useEffect, useMemo, useRef, useState } from 'react';
import { Layer, Shape, Stage } from 'react-konva/lib/ReactKonvaCore';
import type { LaidRun } from '../../../src/layout';
import { fromMm, um } from '../../../src/units';
import { nudgeStep } from '../../commands/film';
import { loadThumbnail } from '../../store/artwork';
import { ROOM_AHEAD, setFrame, useCamera } from '../../store/camera';
import { outlineNow, useDoneChecks } from '../../store/checks';
import { useHeld } from '../../store/held';
import { usePlanning } from '../../store/planning';
import { useWays } from '../../store/selectors';
import { mayWrite } from '../../store/shop';
import { useView } from '../../store/view';
import { type Row, rowsOf } from '../../store/viewport';
import { useWords } from '../../words';
import { area, rulerLength } from '../../words/format';
import { filmGestures, useFrame } from './film-gestures';
import { listenForGestures } from './gestures';
import { createOutlines } from './outlines';
import { paintCodesOf, paintCopy, paintFilm, paintKnifeLines, paintRuler, type Scene } from './paint';
import { createPictures } from './pictures';
import { readColours } from './theme';
import { hasHandle, paintHandle } from './turning';

const RULER = 30;
const FLAGS = 34;

/** All that the film is drawn from, row by row. */
interface FilmScene extends Scene {
  readonly rows: readonly Row[];
  /** How many checks are done: each may tell an outline. */
  readonly checked: number;
}

/** The film across the screen with its ruler, its copies, its knife lines and what is in the hand. */
export function FilmCanvas({ run }: { run: LaidRun }) {
  const { film: words } = useWords();
  const ways = useWays();
  const canvas = useRef<HTMLDivElement>(null);
  const { box } = useFrame();
  const surface = useRef<HTMLDivElement>(null);
  const size = useSize(canvas);
  const colours = useColours(canvas);
  const pictures = useComingIn(picturesOf);
  const outlines = useComingIn(outlinesOf);
  const checked = useDoneChecks();
  const allOutlines = useView((state) => state.outlines);
  const { view, frame } = useCamera();
  const selected = useView((state) => state.selected);
  const held = useHeld((state) => state.held);
  const plans = usePlanning((state) => state.plans);
  const [pointed, setPointed] = useState<string | null>(null);

  const { width: filmWidth } = run.film;
  const length = Math.max(run.lengthUsed + ROOM_AHEAD, fromMm(1000));
  useEffect(() => {
    if (size) {
      const pixels = { width: size.width, height: size.height - RULER - FLAGS };
      setFrame({ pixels, around: RULER + FLAGS, film: { width: filmWidth, length: um(length) } });
    }
  }, [size, filmWidth, length]);

  useEffect(() => {
    const stopped = new AbortController();
    if (surface.current) listenForGestures(surface.current, filmGestures, stopped.signal);
    return () => stopped.abort();
  }, []);

  const carried = held?.copies.map(({ id }) => id).join(' ') ?? '';
  const lifted = useMemo(() => new Set(carried.split(' ')), [carried]);
  const { unit } = ways;
  // The same while a copy is carried, so that the film below it is not drawn again.
  const scene = useMemo(
    (): FilmScene | null =>
      size &&
      frame &&
      colours &&
      pictures &&
      outlines && {
        run,
        view,
        pixels: { width: size.width, height: size.height - RULER - FLAGS },
        rows: rowsOf(view, frame),
        colours,
        pictures,
        outlines,
        checked,
        allOutlines,
        unit,
        selected,
        lifted,
      },
    [run, view, size, frame, colours, pictures, outlines, checked, allOutlines, unit, selected, lifted],
  );
  const shownRun = held?.run ?? run;
  const chosen = run.copies.filter(({ id }) => selected.has(id));
  const named = run.copies.filter(({ id }) => (id === pointed || selected.has(id)) && !scene?.lifted.has(id));
  const [only] = chosen;
  const told =
    only && chosen.length === 1
      ? words.chosen(
          `${only.order.code} ${only.number}, ${only.transfer.name}`,
          area(only.width, only.length, ways),
          rulerLength(only.x, ways),
          rulerLength(only.y, ways),
        )
      : chosen.length > 0 && words.selected(chosen.length, ways);

  return (
    <div className="film-canvas" ref={canvas}>
      {scene && size && (
        <Stage width={size.width} height={size.height} listening={false} aria-hidden="true">
          <FilmLayer scene={scene} />
          <Layer listening={false}>
            <Painting
              y={0}
              rows={scene.rows}
              paint={(context, row) => paintRuler(context, inRow(scene, row), RULER)}
            />
            <Painting
              y={RULER}
              rows={scene.rows}
              paint={(context, row) => paintCodesOf(context, inRow(scene, row), named)}
              clip
            />
            {held && (
              <Painting
                y={RULER}
                rows={scene.rows}
                paint={(context, row) => {
                  const hold = held.refusals.length > 0 ? 'refused' : 'held';
                  const shown = inRow(scene, row);
                  for (const copy of held.copies) paintCopy(context, shown, copy, hold);
                  paintCodesOf(context, shown, held.copies);
                }}
              />
            )}
            {hasHandle(chosen) && mayWrite() && (
              <Painting
                y={RULER}
                rows={scene.rows}
                paint={(context, row) => {
                  for (const copy of held?.copies ?? chosen) paintHandle(context, inRow(scene, row), copy);
                }}
                clip
              />
            )}
            <Painting
              y={0}
              rows={scene.rows}
              paint={(context, row) =>
                paintKnifeLines(
                  context,
                  { ...inRow(scene, row), run: shownRun },
                  RULER,
                  RULER + row.pixels.height,
                  (index, at) =>
                    run.film.kind === 'roll'
                      ? words.knifeFlag(index + 1, rulerLength(um(at), ways))
                      : words.sheetFlag(index + 2),
                )
              }
            />
          </Layer>
        </Stage>
      )}
      {/* biome-ignore lint/a11y/useSemanticElements: no element stands for a drawing that takes keys */}
      <div
        ref={surface}
        className={selected.size > 0 ? 'film-surface has-selection' : 'film-surface'}
        data-keys="film"
        data-plans={plans}
        role="group"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the film takes the keys of its commands
        tabIndex={0}
        // A finger rests nowhere: what it taps is selected, and named so.
        onPointerMove={({ pointerType, nativeEvent: { offsetX, offsetY } }) =>
          pointerType === 'mouse' && setPointed(filmGestures.copyAt({ x: offsetX, y: offsetY })?.id ?? null)
        }
        onPointerLeave={() => setPointed(null)}
        aria-label={words.filmLabel(run.copies.length, ways)}
        aria-describedby="film-keys"
      >
        {box && (
          <div
            className="selection-frame"
            style={{
              left: Math.min(box.from.x, box.to.x),
              top: Math.min(box.from.y, box.to.y),
              width: Math.abs(box.to.x - box.from.x),
              height: Math.abs(box.to.y - box.from.y),
            }}
          />
        )}
      </div>
      <p className="visually-hidden" role="status">
        {told}
      </p>
      <p id="film-keys" className="visually-hidden">
        {words.filmKeys(rulerLength(nudgeStep[ways.unit], ways))}
      </p>
    </div>
  );
}

/** The film and what lies on it. */
const FilmLayer = memo(function FilmLayer({ scene }: { scene: FilmScene }) {
  return (
    <Layer listening={false}>
      <Painting
        y={RULER}
        rows={scene.rows}
        paint={(context, row) => paintFilm(context, inRow(scene, row))}
        clip
      />
    </Layer>
  );
});

/** A scene as a row of it shows it. */
const inRow = (scene: Scene, { view, pixels }: Row): Scene => ({ ...scene, view, pixels });

/** A shape that paints each row straight on the canvas; only what is in view is drawn. */
function Painting({
  y,
  rows,
  paint,
  clip = false,
}: {
  y: number;
  rows: readonly Row[];
  paint: (context: CanvasRenderingContext2D, row: Row) => void;
  /** Nothing painted reaches over the row's film. */
  clip?: boolean;
}) {
  return (
    <Shape
      y={y}
      listening={false}
      perfectDrawEnabled={false}
      sceneFunc={(context: KonvaContext) => {
        const native = context._context;
        for (const row of rows) {
          native.save();
          native.translate(0, row.top);
          if (clip) {
            native.beginPath();
            native.rect(0, 0, row.pixels.width, row.pixels.height);
            native.clip();
          }
          paint(native, row);
          native.restore();
        }
      }}
    />
  );
}

function useSize(element: React.RefObject<HTMLElement | null>) {
  const [size, setSize] = useState<{ width: number; height: number } | null>(null);
  useEffect(() => {
    if (!element.current) return;
    const observer = new ResizeObserver(([entry]) => {
      if (entry) setSize({ width: entry.contentRect.width, height: entry.contentRect.height });
    });
    observer.observe(element.current);
    return () => observer.disconnect();
  }, [element]);
  return size;
}

/** The page's colours, read again when the scheme or the contrast changes. */
function useColours(element: React.RefObject<HTMLElement | null>) {
  const [colours, setColours] = useState<ReturnType<typeof readColours> | null>(null);
  useEffect(() => {
    const read = () => element.current && setColours(readColours(element.current));
    read();
    const stopped = new AbortController();
    for (const query of [
      '(prefers-color-scheme: dark)',
      '(forced-colors: active)',
      '(prefers-contrast: more)',
    ]) {
      matchMedia(query).addEventListener('change', read, { signal: stopped.signal });
    }
    return () => stopped.abort();
  }, [element]);
  return colours;
}

const picturesOf = (onChange: () => void) => createPictures(loadThumbnail, onChange);
const outlinesOf = (onChange: () => void) => createOutlines(outlineNow, onChange);

/** What comes in bit by bit: another object each time, so that what is drawn with it is drawn again. */
function useComingIn<Source extends { close(): void }>(
  open: (onChange: () => void) => Source,
): Source | null {
  const [source, setSource] = useState<Source | null>(null);
  useEffect(() => {
    const own = open(() => setSource({ ...own }));
    setSource(own);
    return own.close;
  }, [open]);
  return source;
}
