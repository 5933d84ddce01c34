import { edits } from '../../src/editing';
import { fromDegrees } from '../../src/units';
import { latestReading } from '../../src/upkeep';
import { Button } from '../parts/Button';
import { Form } from '../parts/Form';
import { useForm } from '../parts/fields/useForm';
import { useReader } from '../store/reader';
import { settingsOrFirst } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { today } from '../store/today';
import { checkName, useCheckStates } from '../store/upkeep';
import { dayAndTime, degreesBetween } from '../words/format';
import { type Air, airEntry, airTable } from './air-form';
import { airRemarks, airText } from './air-words';
import type { Initials } from './initials';

/** The room that ink and powder like: common practice, no source. */
const AIR = { least: fromDegrees(20, 'C'), most: fromDegrees(28, 'C') };

/** Temperature and humidity of the room, as someone reads them; the check of the room is done with it. */
export function RoomAir({ initials }: { initials: Initials }) {
  const reader = useReader();
  const { upkeep: words } = reader.words;
  const readings = useShop(({ book }) => book.reading);
  const { station } = useShop(({ book }) => settingsOrFirst(book));
  const room = useCheckStates().find(({ check }) => check.id === 'room')?.check;
  const form = useForm(airTable(station.temperature), () => airEntry, reader);
  const last = latestReading(Object.values(readings), null);

  const save = (air: Air) => {
    const by = initials();
    if (by === null) return;
    const note = airText(air, station, reader);
    const check = room
      ? { check: room.id, machine: null, name: checkName(room, reader.words), done: true, note }
      : null;
    act(edits.noteRoom(air, check, { by, day: today() }));
    form.begin(airEntry);
  };
  return (
    <section aria-labelledby="upkeep-air-title">
      <h3 id="upkeep-air-title">{words.air}</h3>
      <p className="quiet small">
        {words.airHint(degreesBetween(AIR.least, AIR.most, station.temperature, reader.locale))}
      </p>
      <Form onSubmit={() => form.submit(save)}>
        {form.all()}
        <div className="actions">
          <Button writes type="submit">
            {words.noteAir}
          </Button>
        </div>
      </Form>
      <p data-testid="last-reading" role="status">
        {last
          ? words.lastReading(dayAndTime(last.at, reader), airText(last, station, reader), last.by)
          : words.noReading}
      </p>
      {last &&
        airRemarks(last, words).map((remark) => (
          <p key={remark} className="care small">
            {remark}
          </p>
        ))}
    </section>
  );
}
