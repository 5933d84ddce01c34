import { useState } from 'react';
import { edits } from '../../src/editing';
import { parseTemperature, toDegrees } from '../../src/units';
import { latestReading, parseHumidity, temperatureRemark } from '../../src/upkeep';
import { Button } from '../parts/Button';
import { Field } from '../parts/Field';
import { Form } from '../parts/Form';
import { settingsOrFirst, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { today } from '../store/today';
import { checkName, useCheckStates } from '../store/upkeep';
import { useWords } from '../words';
import { dayAndTime } from '../words/format';
import { airRemarks, airText } from './air-words';
import type { Initials } from './initials';

interface Problems {
  readonly temperature?: string;
  readonly humidity?: string;
}

/** Temperature and humidity of the room, as someone reads them; the check of the room is done with it. */
export function RoomAir({ initials }: { initials: Initials }) {
  const catalogue = useWords();
  const { upkeep: words } = catalogue;
  const ways = useWays();
  const readings = useShop(({ book }) => book.reading);
  const { station } = useShop(({ book }) => settingsOrFirst(book));
  const room = useCheckStates().find(({ check }) => check.id === 'room')?.check;
  const [typed, setTyped] = useState({ temperature: '', humidity: '' });
  const [problems, setProblems] = useState<Problems>({});
  const last = latestReading(Object.values(readings), null);

  const readTemperature = () => {
    const read = parseTemperature(typed.temperature, station.temperature);
    if (!read.ok) {
      const { empty, unreadable } = catalogue.temperatureProblems;
      return {
        problem: read.problem === 'impossible' ? words.noRoom : read.problem === 'empty' ? empty : unreadable,
      };
    }
    const value = toDegrees(read.value, 'C');
    return temperatureRemark(value) === 'impossible' ? { problem: words.noRoom } : { value };
  };
  const readHumidity = () => {
    const read = parseHumidity(typed.humidity);
    return read.ok ? { value: read.value } : { problem: words.humidityProblems[read.problem] };
  };
  const save = () => {
    const isEmpty = typed.temperature.trim() === '' && typed.humidity.trim() === '';
    if (isEmpty) return setProblems({ temperature: words.airNeeded });
    const temperature = typed.temperature.trim() === '' ? { value: null } : readTemperature();
    const humidity = typed.humidity.trim() === '' ? { value: null } : readHumidity();
    const found: Problems = {
      ...('problem' in temperature ? { temperature: temperature.problem } : {}),
      ...('problem' in humidity ? { humidity: humidity.problem } : {}),
    };
    setProblems(found);
    if ('problem' in temperature || 'problem' in humidity) return;
    const by = initials();
    if (by === null) return;
    const air = { temperature: temperature.value ?? null, humidity: humidity.value ?? null };
    const note = airText(air, station, ways);
    const check = room ? { check: room.id, name: checkName(room, catalogue), done: true, note } : null;
    act(edits.noteRoom(air, check, { by, day: today() }));
    setTyped({ temperature: '', humidity: '' });
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
          problem={problems.temperature ?? null}
        />
        <Field
          label={words.humidity}
          value={typed.humidity}
          onChange={(humidity) => setTyped({ ...typed, humidity })}
          inputMode="decimal"
          problem={problems.humidity ?? null}
        />
        <div className="actions">
          <Button type="submit">{words.noteAir}</Button>
        </div>
      </Form>
      <p data-testid="last-reading" role="status">
        {last
          ? words.lastReading(dayAndTime(last.at, ways), airText(last, station, ways), last.by)
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
