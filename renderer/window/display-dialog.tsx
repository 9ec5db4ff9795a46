import { type Language, say } from '#shared-core';
import { Button, ChoiceField, Dialog } from '../design/index.ts';
import { usePreferences, useWindowParts } from '../parts/index.ts';
import type { Preferences } from '../stores/index.ts';

const themeOptions = [
  { value: 'system', label: say('As the system') },
  { value: 'light', label: say('Light') },
  { value: 'dark', label: say('Dark') },
  { value: 'projector', label: say('Projector') },
] as const satisfies readonly { value: Preferences['theme']; label: string }[];

/** Each in its own words: who looks for it may not read the others. */
const languageOptions = [
  { value: 'en', label: 'English' },
  { value: 'de', label: 'Deutsch' },
] as const satisfies readonly { value: Language; label: string }[];

const decimalOptions = [
  { value: '.', label: '78.4' },
  { value: ',', label: '78,4' },
] as const;

/** As each language writes its numbers; who wants the other sign chooses it after that. */
const decimalSigns = { en: '.', de: ',' } as const satisfies Record<Language, string>;

const switchOptions = [
  { value: 'on', label: say('On') },
  { value: 'off', label: say('Off') },
] as const;

export function DisplayDialog({ onClose }: { readonly onClose: () => void }) {
  const preferences = usePreferences((state) => state);
  const { chime } = useWindowParts();
  const { set } = preferences;
  const speak = (language: Language) => {
    set({ language, decimal: decimalSigns[language] });
    // What has been said stays as it was said; the run goes on in the services, and drafts are kept.
    window.location.reload();
  };
  return (
    <Dialog title={say('Display and sound')} onClose={onClose}>
      <div className="display-choices">
        <ChoiceField
          name={say('Colours')}
          options={themeOptions}
          value={preferences.theme}
          onValue={(theme) => set({ theme })}
        />
        <ChoiceField
          name={say('Language')}
          options={languageOptions}
          value={preferences.language}
          onValue={speak}
        />
        <ChoiceField
          name={say('Numbers')}
          options={decimalOptions}
          value={preferences.decimal}
          onValue={(decimal) => set({ decimal })}
        />
        <ChoiceField
          name={say('Sound with prompts')}
          options={switchOptions}
          value={preferences.sound ? 'on' : 'off'}
          onValue={(value) => set({ sound: value === 'on' })}
        />
        <div className="choices">
          <Button onClick={() => chime.play('high')}>{say('Test the urgent sound')}</Button>
          <Button onClick={() => chime.play('medium')}>{say('Test the softer sound')}</Button>
        </div>
        <ChoiceField
          name={say('Single letters make marks in Watch')}
          options={switchOptions}
          value={preferences.markKeys ? 'on' : 'off'}
          onValue={(value) => set({ markKeys: value === 'on' })}
        />
      </div>
      <div className="dialog-acts">
        <Button weight="main" onClick={onClose}>
          {say('Done')}
        </Button>
      </div>
    </Dialog>
  );
}
