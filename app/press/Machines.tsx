import { useState } from 'react';
import { MOST_MACHINES, type Printer, printerOf, type Station, sendings, withPrinter } from '../../src/model';
import {
  type Machine,
  numbered,
  startingHeatPress,
  startingOven,
  startingPerson,
  startingPrinter,
} from '../../src/pressing';
import { machineLists, machineName } from '../panels/machine-name';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { FieldGroup } from '../parts/FieldGroup';
import type { FormOf } from '../parts/fields/useForm';
import { Tick } from '../parts/Tick';
import { useWays } from '../store/selectors';
import { editContext, useShop } from '../store/shop';
import { useAllWords } from '../words';
import { listed } from '../words/format';
import { fieldOf, type MachineField, machineFields } from './machine-fields';
import './machines.css';

type Lists = 'printers' | 'presses' | 'ovens' | 'people';
type StationForm = FormOf<Station, MachineField>;

/** So many there must be. */
const LEAST: Readonly<Record<Lists, number>> = { printers: 1, presses: 0, ovens: 1, people: 1 };

/** What may be chosen, and that nothing has been said yet. */
const orUntold = <Value extends string>(values: readonly Value[]): readonly (Value | 'untold')[] => [
  'untold',
  ...values,
];

/** A station with one more of a list, like the last of it. */
function oneMore(station: Station, key: Lists, unit: 'mm' | 'in'): Station {
  const { printers, presses, ovens, people } = station;
  const { newId } = editContext();
  switch (key) {
    case 'printers':
      return { ...station, printers: [...printers, startingPrinter(newId(), unit)] };
    case 'presses': {
      const id = newId<'press'>();
      const like = presses.at(-1) ?? startingHeatPress(id, unit);
      return { ...station, presses: [...presses, { ...like, id, name: '' }] };
    }
    case 'ovens': {
      const id = newId<'oven'>();
      const like = ovens.at(-1) ?? startingOven(id, unit);
      return { ...station, ovens: [...ovens, { ...like, id, name: '' }] };
    }
    case 'people':
      return { ...station, people: [...people, startingPerson(newId())] };
  }
}

function oneLess(station: Station, key: Lists, gone: string): Station {
  const isLeft = ({ id }: { readonly id: string }) => id !== gone;
  if (key !== 'printers') return { ...station, [key]: station[key].filter(isLeft) };
  const [first, ...others] = station.printers.filter(isLeft);
  return first ? { ...station, printers: [first, ...others] } : station;
}

/** Printers, presses, what else cures, and people: a list of each, one below another. */
export function Machines({ form }: { form: StationForm }) {
  const { record } = form;
  return machineLists(record)
    .filter(({ key }) => key !== 'ovens' || record.curer !== 'press')
    .map(({ key, kind }) => (
      <MachineList key={key} form={form} list={key} machines={numbered(kind, record[key])} kind={kind} />
    ));
}

function MachineList({
  form,
  list,
  machines,
  kind,
}: {
  form: StationForm;
  list: Lists;
  machines: readonly Machine[];
  kind: Machine['kind'];
}) {
  const { station: words } = useAllWords();
  const { unit } = useWays();
  const { record } = form;
  return (
    <FieldGroup isFolded title={words.machines[kind]} told={machines.map(machineName).join(' · ')}>
      {machines.length === 0 && <p className="quiet small wide-row">{words.noPress}</p>}
      {machines.map((machine) => (
        <MachineFields
          key={machine.id}
          form={form}
          list={list}
          machine={machine}
          mayGo={machines.length > LEAST[list]}
        />
      ))}
      {machines.length < MOST_MACHINES && (
        <div className="actions">
          <Button onPress={() => form.choose(oneMore(record, list, unit))}>{words.add[kind]}</Button>
        </div>
      )}
    </FieldGroup>
  );
}

function MachineFields({
  form,
  list,
  machine,
  mayGo,
}: {
  form: StationForm;
  list: Lists;
  machine: Machine;
  mayGo: boolean;
}) {
  const { station: words } = useAllWords();
  const ways = useWays();
  const films = useShop(({ book }) => book.film);
  const [isHeld, setHeld] = useState(false);
  const { record } = form;
  const name = form.textOf(fieldOf(machine.id, 'name'))?.trim() || machineName(machine);
  const inIt =
    list === 'printers'
      ? Object.values(films).filter((film) => !film.archived && printerOf(record, film).id === machine.id)
      : [];
  const printer = record.printers.find(({ id }) => id === machine.id);
  const press = record.presses.find(({ id }) => id === machine.id);
  const person = record.people.find(({ id }) => id === machine.id);
  return (
    <fieldset className="machine fields">
      <legend>{name}</legend>
      {form.field(fieldOf(machine.id, 'name'))}
      {printer && (
        <PrinterChoices
          printer={printer}
          onChange={(own) => form.choose({ ...record, printers: withPrinter(record.printers, own) })}
        />
      )}
      {press && (
        <Tick
          label={words.caps}
          checked={press.caps}
          onChange={(caps) =>
            form.choose({
              ...record,
              presses: record.presses.map((one) => (one === press ? { ...press, caps } : one)),
            })
          }
        />
      )}
      {person && (
        <Choice
          label={words.atWork}
          value={person.hours === null ? 'shop' : 'own'}
          options={(['shop', 'own'] as const).map((value) => ({ value, label: words.atWorks[value] }))}
          onChange={(chosen) =>
            form.choose({
              ...record,
              people: record.people.map((one) =>
                one === person ? { ...one, hours: chosen === 'own' ? record.hours.week : null } : one,
              ),
            })
          }
        />
      )}
      {machineFields[list]
        .filter((field) => field !== 'name')
        .map((field) => form.field(fieldOf(machine.id, field)))}
      {mayGo && (
        <div className="actions">
          <Button
            weight="plain"
            onPress={() => (inIt.length > 0 ? setHeld(true) : form.choose(oneLess(record, list, machine.id)))}
          >
            {words.remove(name)}
          </Button>
        </div>
      )}
      {isHeld && inIt.length > 0 && (
        <p className="problem wide-row" role="alert">
          {words.filmIn(
            name,
            listed(
              inIt.map((film) => film.name),
              ways,
            ),
          )}
        </p>
      )}
    </fieldset>
  );
}

/** How runs reach a printer, and what it does after a cut. */
function PrinterChoices({ printer, onChange }: { printer: Printer; onChange: (printer: Printer) => void }) {
  const { station: words } = useAllWords();
  const { sends, feedsBack } = printer;
  return (
    <>
      <Choice
        label={words.sends}
        value={sends ?? 'untold'}
        options={orUntold(sendings).map((value) => ({ value, label: words.sendings[value] }))}
        onChange={(chosen) => onChange({ ...printer, sends: chosen === 'untold' ? null : chosen })}
      />
      <Choice
        label={words.feedsBack}
        value={feedsBack === null ? 'untold' : feedsBack ? 'yes' : 'no'}
        options={orUntold(['yes', 'no']).map((value) => ({ value, label: words.feedsBacks[value] }))}
        onChange={(chosen) =>
          onChange({ ...printer, feedsBack: chosen === 'untold' ? null : chosen === 'yes' })
        }
      />
    </>
  );
}
