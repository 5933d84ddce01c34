import { FABRICS, type Fabric } from '../../src/units';
import { Choice } from '../parts/Choice';
import { ChoiceCell } from '../parts/fields/ChoiceCell';
import type { Choosing } from '../parts/Select';
import { useAllWords } from '../words';

const UNTOLD = 'untold';

interface Telling {
  readonly label: string;
  /** `null` while nobody has told. */
  readonly fabric: Fabric | null;
  readonly onTell: (fabric: Fabric | null) => void;
}

/** A fabric among all there are, and none that is told. */
function useFabrics({
  label,
  fabric,
  onTell,
}: Telling): Choosing<Fabric | typeof UNTOLD> & Pick<Telling, 'label'> {
  const { press } = useAllWords();
  return {
    label,
    value: fabric ?? UNTOLD,
    options: [
      { value: UNTOLD, label: press.untold },
      ...FABRICS.map((value) => ({ value, label: press.fabrics[value] })),
    ],
    onChange: (value) => onTell(value === UNTOLD ? null : value),
  };
}

/** What garments are made of, under its label. */
export const FabricChoice = (telling: Telling) => <Choice writes {...useFabrics(telling)} />;

/** What a line is made of, in a table. */
export const FabricCell = (telling: Telling) => <ChoiceCell {...useFabrics(telling)} />;
