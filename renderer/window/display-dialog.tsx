import { Button, ChoiceField, Dialog } from '../design/index.ts';
import { usePreferences, useWindowParts } from '../parts/index.ts';
import type { Preferences } from '../stores/index.ts';

const themeOptions = [
  { value: 'system', label: 'As the system' },
  { value: 'light', label: 'Light' },
  { value: 'dark', label: 'Dark' },
  { value: 'projector', label: 'Projector' },
] as const satisfies readonly { value: Preferences['theme']; label: string }[];

const decimalOptions = [
  { value: '.', label: '78.4' },
  { value: ',', label: '78,4' },
] as const;

const switchOptions = [
  { value: 'on', label: 'On' },
  { value: 'off', label: 'Off' },
] as const;

export function DisplayDialog({ onClose }: { readonly onClose: () => void }) {
  const preferences = usePreferences((state) => state);
  const { chime } = useWindowParts();
  const { set } = preferences;
  return (
    <Dialog title="Display and sound" onClose={onClose}>
      <div className="display-choices">
        <ChoiceField
          name="Colours"
          options={themeOptions}
          value={preferences.theme}
          onValue={(theme) => set({ theme })}
        />
        <ChoiceField
          name="Numbers"
          options={decimalOptions}
          value={preferences.decimal}
          onValue={(decimal) => set({ decimal })}
        />
        <ChoiceField
          name="Sound with prompts"
          options={switchOptions}
          value={preferences.sound ? 'on' : 'off'}
          onValue={(value) => set({ sound: value === 'on' })}
        />
        <div className="choices">
          <Button onClick={() => chime.play('high')}>Test the urgent sound</Button>
          <Button onClick={() => chime.play('medium')}>Test the softer sound</Button>
        </div>
        <ChoiceField
          name="Single letters make marks in Watch"
          options={switchOptions}
          value={preferences.markKeys ? 'on' : 'off'}
          onValue={(value) => set({ markKeys: value === 'on' })}
        />
      </div>
      <div className="dialog-acts">
        <Button weight="main" onClick={onClose}>
          Done
        </Button>
      </div>
    </Dialog>
  );
}
