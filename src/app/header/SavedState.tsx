import type { AppState } from '../store/state.ts';
import { useApp } from '../store/useApp.ts';

/** Whether the design is in a file, and whether the browser keeps it meanwhile. */
export function SavedState() {
  const { words, more } = useSaved();
  return (
    <span className="saved" role="status" title={more}>
      {words}
    </span>
  );
}

function useSaved(): { readonly words: string; readonly more: string } {
  const inFile = useApp(fileState);
  const fileName = useApp(({ session }) => session.file?.name ?? '');
  const keeping = useApp(({ session }) => session.keeping);
  const here =
    keeping === 'refused'
      ? 'This browser refuses to keep it: save it before you leave.'
      : 'This browser keeps it through a reload.';
  switch (inFile) {
    case 'saved':
      return { words: 'saved', more: `Saved in ${fileName}.` };
    case 'changed':
      return { words: 'changed since saved', more: `Changed since ${fileName}. ${here}` };
    default:
      return {
        words: keeping === 'refused' ? 'not kept' : keeping === 'kept' ? 'not in a file yet' : 'keeping …',
        more: `Not saved to a file yet. ${here}`,
      };
  }
}

function fileState({ session, history }: AppState): 'none' | 'saved' | 'changed' {
  if (!session.file) return 'none';
  return session.file.text === history.present ? 'saved' : 'changed';
}
