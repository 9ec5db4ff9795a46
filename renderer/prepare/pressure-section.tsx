import { azeotropeSlopeKPerKPa, defaultRunSettings, say } from '#shared-core';
import { ChoiceField, NumberField } from '../design/index.ts';
import { pressureFromDraft, useDraftFields } from '../draft/index.ts';
import { usePreferences } from '../parts/index.ts';
import type { PressureFrom, PressureUnit } from '../stores/index.ts';
import { useWords } from '../words/index.ts';
import { SteamReading } from './steam-reading.tsx';
import { unknownPressureWords } from './unknown-pressure.ts';

const sources = [
  { value: 'barometer', label: say('Barometer in this room') },
  { value: 'sea-level', label: say('Weather report') },
  { value: 'steam', label: say('Steam of boiling water, with this probe') },
  { value: 'altitude', label: say('Only the altitude') },
  { value: 'unknown', label: say('I don’t know') },
] as const satisfies readonly { value: PressureFrom; label: string }[];

const units = [
  { value: 'hPa', label: 'hPa' },
  { value: 'kPa', label: 'kPa' },
] as const satisfies readonly { value: PressureUnit; label: string }[];

const fromMap = say('Above sea level, from a map.');
const altitudeHints = {
  barometer: say('Used to check that the barometer is not set to sea level.'),
  'sea-level': fromMap,
  steam: say('If you know it: shows whether the probe is off by more than it should be.'),
  altitude: fromMap,
} as const satisfies Record<Exclude<PressureFrom, 'unknown'>, string>;

/** Station and sea-level pressure are two different questions here, never one field with a switch. */
export function PressureSection() {
  const { draft, change, numberField, settings } = useDraftFields();
  const limitAbv = (settings.ok ? settings.value : defaultRunSettings).leastStrengthAbv;
  const { pressureFrom, pressureUnit } = draft;
  const words = useWords();
  const decimal = usePreferences((preferences) => preferences.decimal);
  const pressure = pressureFromDraft(draft, decimal);
  const { pressureKPa } = pressure.ok ? pressure.value.setting : defaultRunSettings.pressure;
  const slopeKPerKPa = azeotropeSlopeKPerKPa(pressureKPa);
  return (
    <div className="prepare-fields">
      <ChoiceField
        name={say('Where the pressure comes from')}
        options={sources}
        value={pressureFrom}
        onValue={(value) => change({ pressureFrom: value })}
      />
      {(pressureFrom === 'barometer' || pressureFrom === 'sea-level') && (
        <ChoiceField
          name={say('Unit')}
          options={units}
          value={pressureUnit}
          onValue={(value) => change({ pressureUnit: value })}
        />
      )}
      {pressureFrom === 'barometer' && (
        <NumberField
          unit={pressureUnit}
          hint={say('As it is in this room, not corrected to sea level.')}
          {...numberField('stationPressure')}
        />
      )}
      {pressureFrom === 'sea-level' && (
        <NumberField
          unit={pressureUnit}
          hint={say('Reports give the pressure at sea level; it is converted to your altitude.')}
          {...numberField('seaLevelPressure')}
        />
      )}
      {pressureFrom === 'steam' && <SteamReading field={numberField('steamReading')} />}
      {pressureFrom !== 'unknown' && (
        <NumberField unit="m" hint={altitudeHints[pressureFrom]} {...numberField('altitudeM')} />
      )}
      <p className="soft field-wide">
        {say('It moves the plateau by {slope} for every kPa. A barometer or steam is best.', {
          slope: words.quantity(slopeKPerKPa, 2, 'K'),
        })}
      </p>
      {pressure.ok && (
        <p className="prepare-finding" role="status">
          {pressure.value.doubt ?? pressure.value.sentence}{' '}
          {pressureFrom === 'unknown' && unknownPressureWords(limitAbv, decimal)}
        </p>
      )}
    </div>
  );
}
