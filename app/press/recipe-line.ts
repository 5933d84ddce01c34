import type { LaidRun } from '../../src/layout';
import { pressRecipe } from '../../src/pressing';
import type { Fabric } from '../../src/units';
import { stationOf } from '../store/selectors';
import type { Words } from '../words';
import { bothDegrees, type Ways } from '../words/format';

/** What a fabric is called; the name of what nobody has told. */
export const fabricName = (fabric: Fabric | null, press: Words['press']): string =>
  fabric === null ? press.untold : press.fabrics[fabric];

/** How a fabric is pressed on a run, from the pre-press to the second press. */
export function recipeLine(run: LaidRun, fabric: Fabric | null, press: Words['press'], ways: Ways): string {
  const { peel } = run.film;
  const { values } = pressRecipe(run.view, peel, fabric);
  return [
    ...(values.prePress > 0 ? [press.prePress(values.prePress, ways)] : []),
    press.line(values, bothDegrees(values.temperature, stationOf(run).temperature, ways.locale), ways),
    press.cover(values.cover),
    press.peelAfter(peel, values.wait, ways),
    ...(values.secondPress > 0 ? [press.secondPress(values.secondPress, ways)] : []),
  ].join(', ');
}
