import type { Theme } from '../store/state.ts';

const KEY = 'pinbridge-theme';

/** The theme chosen before in this browser. */
export function rememberedTheme(): Theme {
  try {
    const theme = localStorage.getItem(KEY);
    return theme === 'light' || theme === 'dark' ? theme : 'auto';
  } catch {
    // a browser that refuses storage: the system's own choice will do
    return 'auto';
  }
}

export function rememberTheme(theme: Theme): void {
  try {
    localStorage.setItem(KEY, theme);
  } catch {
    // refused: it holds until the page is left
  }
}
