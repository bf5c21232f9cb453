import { rememberTheme } from '../keep/theme.ts';
import type { Theme } from '../store/state.ts';
import { useApp, useAppStore } from '../store/useApp.ts';

const WORDS: Readonly<Record<Theme, string>> = {
  auto: 'Light: as the computer',
  light: 'Light: day',
  dark: 'Light: night',
};

/** The board by day, by night, or as the computer has it. */
export function ThemeChoice() {
  const store = useAppStore();
  const theme = useApp(({ session }) => session.theme);
  return (
    <select
      className="theme"
      aria-label="Light"
      title="The board by day, by night, or as the computer has it"
      value={theme}
      onChange={(event) => {
        const chosen = event.target.value as Theme;
        rememberTheme(chosen);
        store.setSession({ theme: chosen });
      }}
    >
      {Object.entries(WORDS).map(([value, words]) => (
        <option key={value} value={value}>
          {words}
        </option>
      ))}
    </select>
  );
}
