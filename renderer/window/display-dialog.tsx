import { type Language, languages, say } from '#shared-core';
import { Button, ChoiceField, Dialog } from '../design/index.ts';
import { usePreferences, useWindowParts } from '../parts/index.ts';
import type { Preferences } from '../stores/index.ts';

const themeOptions = [
  { value: 'system', label: say('As the system') },
  { value: 'light', label: say('Light') },
  { value: 'dark', label: say('Dark') },
  { value: 'projector', label: say('Projector') },
] as const satisfies readonly { value: Preferences['theme']; label: string }[];

/** What each language calls itself, since who looks for it may not read the others, and its decimal sign: who wants the other chooses it after that. */
const languageFacts: Readonly<
  Record<Language, { readonly name: string; readonly decimal: Preferences['decimal'] }>
> = {
  en: { name: 'English', decimal: '.' },
  de: { name: 'Deutsch', decimal: ',' },
};

const languageOptions = languages.map((value) => ({ value, label: languageFacts[value].name }));

const decimalOptions = [
  { value: '.', label: '78.4' },
  { value: ',', label: '78,4' },
] as const;

const switchOptions = [
  { value: 'on', label: say('On') },
  { value: 'off', label: say('Off') },
] as const;

export function DisplayDialog({ onClose }: { readonly onClose: () => void }) {
  const preferences = usePreferences((state) => state);
  const { chime } = useWindowParts();
  const { set } = preferences;
  const speak = (language: Language) => {
    set({ language, decimal: languageFacts[language].decimal });
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
