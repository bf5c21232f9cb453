import { useApp } from './store/useApp.ts';
import { useMedia } from './useMedia.ts';

/** Whether the board is shown by night. */
export function useDark(): boolean {
  const theme = useApp(({ session }) => session.theme);
  const system = useMedia('(prefers-color-scheme: dark)');
  return theme === 'auto' ? system : theme === 'dark';
}
