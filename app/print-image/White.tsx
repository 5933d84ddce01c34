import { edits } from '../../src/editing';
import type { Settings } from '../../src/model';
import { isSpotName } from '../../src/output/print-image';
import { fail, fromMm, ok } from '../../src/units';
import type { Codec } from '../parts/fields/codec';
import { fineLength } from '../parts/fields/lengths';
import { Tick } from '../parts/Tick';
import { act } from '../store/shop';
import { useAllWords } from '../words';
import { TypedField } from './TypedField';

const chokeWidth = fineLength(fromMm(5), ({ artwork }, most) => artwork.tooWide(most));

const spotName: Codec<string> = {
  show: (name) => name,
  read: (text, { words }) =>
    isSpotName(text.trim()) ? ok(text.trim()) : fail(words.printImage.whiteNameProblem),
};

/** Whether the white is written as a plane of its own, how far it is choked and what it is called. */
export function White({
  settings: { printImage, limits },
  onChange,
  onRead,
}: {
  settings: Omit<Settings, 'changed'>;
  onChange: (fields: Partial<Settings['printImage']>) => void;
  /** Told whether what stands in each field can be used. */
  onRead: (field: 'choke' | 'name', isRead: boolean) => void;
}) {
  const { printImage: words } = useAllWords();
  return (
    <fieldset className="image-marks">
      <legend>{words.whiteTitle}</legend>
      <Tick
        writes
        label={words.white}
        checked={printImage.white}
        onChange={(white) => {
          onChange({ white });
          // Their fields begin anew with what is kept.
          onRead('choke', true);
          onRead('name', true);
        }}
      />
      <p className="hint">{words.whiteHints[printImage.form]}</p>
      {printImage.white && (
        <div className="fields">
          <TypedField
            label={words.choke}
            hint={words.chokeHint}
            codec={chokeWidth}
            value={limits.choke}
            onValue={(choke) => act(edits.editSettings({ limits: { ...limits, choke } }))}
            onRead={(isRead) => onRead('choke', isRead)}
          />
          {printImage.form !== 'png' && (
            <TypedField
              label={words.whiteName}
              hint={words.whiteNameHint}
              codec={spotName}
              value={printImage.whiteName}
              onValue={(whiteName) => onChange({ whiteName })}
              onRead={(isRead) => onRead('name', isRead)}
            />
          )}
        </div>
      )}
    </fieldset>
  );
}
