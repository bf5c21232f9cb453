import { useApp, useAppStore } from '../store/useApp.ts';
import { Dialog } from './Dialog.tsx';

/** Says what went wrong with a file. */
export function NoticeDialog() {
  const store = useAppStore();
  const notice = useApp(({ session }) => session.notice);
  if (!notice) return null;
  return (
    <Dialog title={notice.title} onClose={() => store.setSession({ notice: undefined })}>
      <p>The design on the bench is as it was.</p>
      <ul className="notice-lines">
        {notice.lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </Dialog>
  );
}
