import { edits } from '../../src/editing';
import { languages, type Settings } from '../../src/model';
import { Choice } from '../parts/Choice';
import { settingsOrFirst, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { CloseButton } from '../windows/CloseButton';
import { Window } from '../windows/Window';
import { languageNames, useAllWords, useLanguage } from '../words';

const choices = <Value extends string>(labels: Readonly<Record<Value, string>>) =>
  (Object.entries(labels) as [Value, string][]).map(([value, label]) => ({ value, label }));

/** Every currency there is, by its code and its name in the language in force; ISO 4217, by Intl. */
function currencies(locale: string, chosen: string) {
  const names = new Intl.DisplayNames(locale, { type: 'currency' });
  return [...new Set([...Intl.supportedValuesOf('currency'), chosen])]
    .sort()
    .map((value) => ({ value, label: `${value} · ${names.of(value)}` }));
}

/** How this shop measures, pays and is spoken to. Every choice holds at once, all over. */
export function ShopDialog() {
  const { shop: words, orders, cutMap } = useAllWords();
  const { locale } = useWays();
  const language = useLanguage();
  const settings = useShop(({ book }) => settingsOrFirst(book));
  const set = (fields: Partial<Settings>) => act(edits.editSettings(fields));
  return (
    <Window title={words.title}>
      <div className="fields">
        <Choice
          writes
          label={words.language}
          value={language}
          options={languages.map((value) => ({ value, label: languageNames[value] }))}
          onChange={(chosen) => set({ language: chosen })}
        />
        <Choice
          writes
          label={words.unit}
          value={settings.unit}
          options={choices(words.units)}
          onChange={(unit) => set({ unit })}
        />
        <Choice
          writes
          label={words.temperature}
          value={settings.station.temperature}
          options={choices(words.temperatures)}
          onChange={(temperature) => act(edits.editStation({ ...settings.station, temperature }))}
        />
        <Choice
          writes
          label={cutMap.paper}
          value={settings.paper}
          options={choices(cutMap.papers)}
          onChange={(paper) => set({ paper })}
        />
        <Choice
          writes
          label={orders.ambiguousDates}
          value={settings.dateOrder ?? 'ask'}
          options={choices({
            ask: orders.askOrder,
            'day-first': orders.dayFirst,
            'month-first': orders.monthFirst,
          })}
          onChange={(order) => set({ dateOrder: order === 'ask' ? null : order })}
        />
        <div className="field">
          <Choice
            writes
            label={words.currency}
            value={settings.currency}
            options={currencies(locale, settings.currency)}
            onChange={(currency) => act(edits.changeCurrency(currency))}
          />
          <p className="hint">{words.noConversion}</p>
        </div>
      </div>
      <p className="small">
        <a href="./licences.txt" target="_blank" rel="noreferrer">
          {words.licences}
        </a>
      </p>
      <div className="actions">
        <CloseButton />
      </div>
    </Window>
  );
}
