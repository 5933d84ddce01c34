import { useEffect, useRef } from 'react';
import uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';
import { type ChartColours, useChartColours } from './useChartColours';

const HEIGHT = 240;

/** What a plot draws, given the colours in force; made anew when they change. */
export interface PlotSpec {
  readonly data: uPlot.AlignedData;
  options(colours: ChartColours): Omit<uPlot.Options, 'width' | 'height'>;
}

/**
 * Axes in the app's typeface, their figures by locale.
 * @param steps between two marks, of which the chart takes what fits; else round in the unit of the data
 */
export const axis = (
  colours: ChartColours,
  values: (value: number) => string,
  { size = 50, steps }: { readonly size?: number; readonly steps?: number[] } = {},
): uPlot.Axis => ({
  stroke: colours.quiet,
  font: '14px "Atkinson Hyperlegible Next", system-ui, sans-serif',
  grid: { stroke: colours.line, width: 1 },
  ticks: { stroke: colours.line, width: 1 },
  size,
  ...(steps ? { incrs: steps } : {}),
  values: (_, splits) => splits.map((value) => (value === null ? '' : values(value))),
});

/** A dot for each run; smaller where there are many. */
export const dotSize = (runs: number): number => (runs > 200 ? 4 : 7);

/** Runs as dots that no line joins. */
export const dots = (colours: ChartColours, runs: number): uPlot.Series => ({
  stroke: colours.accent,
  width: 0,
  paths: () => null,
  points: { show: true, size: dotSize(runs), width: 1.5, fill: colours.accentSoft },
});

/** What was planned, as a dashed line. */
export const plannedLine = (colours: ChartColours): uPlot.Series => ({
  stroke: colours.care,
  width: 1.5,
  dash: [6, 5],
  points: { show: false },
});

/** A chart on a canvas, as wide as its place; `told` says what it shows to those who do not see it. */
export function Plot({ spec, told }: { spec: PlotSpec; told: string }) {
  const place = useRef<HTMLDivElement>(null);
  const colours = useChartColours();
  useEffect(() => {
    const { current } = place;
    if (!current) return;
    const plot = new uPlot(
      {
        legend: { show: false },
        cursor: { show: false },
        ...spec.options(colours),
        width: current.clientWidth,
        height: HEIGHT,
      },
      spec.data,
      current,
    );
    const sizes = new ResizeObserver(() => {
      const width = current.clientWidth;
      // It is told of its first size too, which would draw everything twice.
      if (width !== plot.width) plot.setSize({ width, height: HEIGHT });
    });
    sizes.observe(current);
    return () => {
      sizes.disconnect();
      plot.destroy();
    };
  }, [spec, colours]);
  return <div className="plot" ref={place} role="img" aria-label={told} />;
}
