import { setLanguage } from '#shared-core';
import { preferencesFrom } from './stores/preferences.ts';
import { preferencesKey } from './stores/preferences-store.ts';

const { language } = preferencesFrom(window.localStorage.getItem(preferencesKey), '.');
setLanguage(language);
document.documentElement.lang = language;
