import { useEffect } from 'react';
import { RightTabs } from './figures/RightTabs.tsx';
import { Form } from './form/Form.tsx';
import { Header } from './header/Header.tsx';
import { NoticeDialog } from './header/NoticeDialog.tsx';
import { useShortcuts } from './header/useShortcuts.ts';
import { Middle } from './Middle.tsx';
import { StatusLine } from './part/StatusLine.tsx';
import { Side } from './Side.tsx';
import { useApp } from './store/useApp.ts';
import { useDark } from './useDark.ts';
import { useMedia } from './useMedia.ts';

/** Below this width the right column lies under a tab of the left one. */
const NARROW = '(max-width: 1099px)';

/** The page. */
export function App() {
  const dark = useDark();
  const narrow = useMedia(NARROW);
  const name = useApp(({ history }) => String(history.present.guitar.name));
  useShortcuts();
  useEffect(() => {
    document.documentElement.dataset.theme = dark ? 'dark' : 'light';
  }, [dark]);
  useEffect(() => {
    document.title = name.trim() === '' ? 'Pinbridge' : `${name} · Pinbridge`;
  }, [name]);
  return (
    <div className={narrow ? 'board narrow' : 'board'}>
      <Header />
      {narrow ? (
        <Side />
      ) : (
        <div className="side left">
          <Form />
        </div>
      )}
      <Middle />
      {!narrow && (
        <aside className="side right" aria-label="What it comes to">
          <RightTabs />
        </aside>
      )}
      <StatusLine />
      <NoticeDialog />
    </div>
  );
}
