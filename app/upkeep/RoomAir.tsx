import { useState } from 'react';
import { edits } from '../../src/editing';
import { latestReading } from '../../src/upkeep';
import { Button } from '../parts/Button';
import { Field } from '../parts/Field';
import { Form } from '../parts/Form';
import { optional } from '../parts/fields/codec';
import { settingsOrFirst, useReader } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { today } from '../store/today';
import { checkName, useCheckStates } from '../store/upkeep';
import { dayAndTime } from '../words/format';
import { airRemarks, airText } from './air-words';
import type { Initials } from './initials';
import { workroomHumidity, workroomTemperature } from './workroom';

const humidityField = optional(workroomHumidity);
const nothing = { temperature: '', humidity: '' };

/** Temperature and humidity of the room, as someone reads them; the check of the room is done with it. */
export function RoomAir({ initials }: { initials: Initials }) {
  const reader = useReader();
  const { upkeep: words } = reader.words;
  const readings = useShop(({ book }) => book.reading);
  const { station } = useShop(({ book }) => settingsOrFirst(book));
  const temperatureField = optional(workroomTemperature(station.temperature));
  const room = useCheckStates().find(({ check }) => check.id === 'room')?.check;
  const [typed, setTyped] = useState(nothing);
  const [problems, setProblems] = useState(nothing);
  const last = latestReading(Object.values(readings), null);

  const save = () => {
    const temperature = temperatureField.read(typed.temperature, reader);
    const humidity = humidityField.read(typed.humidity, reader);
    setProblems({
      temperature: temperature.ok ? '' : temperature.problem,
      humidity: humidity.ok ? '' : humidity.problem,
    });
    if (!temperature.ok || !humidity.ok) return;
    const air = { temperature: temperature.value, humidity: humidity.value };
    if (air.temperature === null && air.humidity === null) {
      return setProblems({ ...nothing, temperature: words.airNeeded });
    }
    const by = initials();
    if (by === null) return;
    const note = airText(air, station, reader);
    const check = room ? { check: room.id, name: checkName(room, reader.words), done: true, note } : null;
    act(edits.noteRoom(air, check, { by, day: today() }));
    setTyped(nothing);
  };
  return (
    <section aria-labelledby="upkeep-air-title">
      <h3 id="upkeep-air-title">{words.air}</h3>
      <p className="quiet small">{words.airHint}</p>
      <Form onSubmit={save}>
        <Field
          label={words.temperature(`°${station.temperature}`)}
          value={typed.temperature}
          onChange={(temperature) => setTyped({ ...typed, temperature })}
          inputMode="decimal"
          problem={problems.temperature}
        />
        <Field
          label={words.humidity}
          value={typed.humidity}
          onChange={(humidity) => setTyped({ ...typed, humidity })}
          inputMode="decimal"
          problem={problems.humidity}
        />
        <div className="actions">
          <Button type="submit">{words.noteAir}</Button>
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
