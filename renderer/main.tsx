// First: what other files say is said as they are loaded.
import './speak.ts';
import { createRoot } from 'react-dom/client';
import { config } from 'zod';
import './design/design.css';
import './window/window.css';
import './help/help.css';
import './strip/strip.css';
import './prepare/prepare.css';
import './prepare/risk-checklist.css';
import './prepare/steps.css';
import './ferment/ferment.css';
import './warmth/warmth.css';
import './calibrate/calibrate.css';
import './lesson-script/lesson-script.css';
import './watch/watch.css';
import './watch/note-drawer.css';
import './watch/what-comes.css';
import './watch/watch-phone.css';
import './watch/classroom.css';
import './watch/ferment-screen.css';
import './watch/test-card.css';
import './look-back/look-back.css';
import './measure/measure.css';
import './books/books.css';
import './by-volume/by-volume.css';
import './take-in/take-in.css';
import './understand/understand.css';
import './blind/blind.css';
import './compare/compare.css';
import { createPaintPace, startLiveFeed } from './feed/index.ts';
import { breathe, createCommands, WindowPartsContext } from './parts/index.ts';
import { chooseService } from './service/index.ts';
import { createChime } from './sound/index.ts';
import {
  createBenchStore,
  createNoteDraftStore,
  createPreferencesStore,
  createPrepareStore,
  createRunViewStore,
} from './stores/index.ts';
import { MainWindow } from './window/index.ts';

// The page's policy forbids code made from text, so zod must not try it.
config({ jitless: true });

const localeDecimal = (1.5).toLocaleString().includes(',') ? ',' : '.';

const service = chooseService(window);
const bench = createBenchStore();
const live = createRunViewStore();
const parts = {
  service,
  bench,
  live,
  preferences: createPreferencesStore(window.localStorage, localeDecimal),
  prepare: createPrepareStore(window.sessionStorage),
  noteDraft: createNoteDraftStore(window.sessionStorage),
  commands: createCommands(service, bench),
  chime: createChime(
    () => new AudioContext(),
    () => navigator.userActivation.hasBeenActive,
  ),
};

startLiveFeed({
  service,
  bench,
  live,
  breathe,
  beforeNextPaint: createPaintPace(window),
});

createRoot(document.getElementById('window')!).render(
  <WindowPartsContext value={parts}>
    <MainWindow />
  </WindowPartsContext>,
);
