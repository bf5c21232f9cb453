import { createRoot } from 'react-dom/client';
import { initialDesign } from '../design/initial.ts';
import { App } from './App.tsx';
import { createClient } from './client/client.ts';
import { BENCHES_KEY, rememberedBenches } from './keep/benches.ts';
import { rememberedPapers } from './keep/papers.ts';
import { rememberedReference } from './keep/reference.ts';
import { startKeeping } from './keep/startKeeping.ts';
import { rememberedTheme } from './keep/theme.ts';
import { keepBuilding } from './part/keepBuilding.ts';
import { PartContext } from './part/partContext.ts';
import { createAppStore } from './store/store.ts';
import { StoreContext } from './store/useApp.ts';
import './styles/board.css';

const client = createClient();
const { found, keep } = await startKeeping();
const store = createAppStore({
  text: found?.text ?? initialDesign(),
  good: found?.good,
  // the leave to write into it went with the page that had it: saving asks anew
  file: found?.file && { ...found.file, handle: undefined },
  theme: rememberedTheme(),
  reference: rememberedReference(),
  papers: rememberedPapers(),
  benches: rememberedBenches(),
});
keep(store);
const building = keepBuilding(store, client);
// what another window of this browser ticks and measures is taken over
addEventListener('storage', ({ key }) => {
  if (key === BENCHES_KEY) store.setSession({ benches: rememberedBenches() });
});

const root = document.getElementById('root');
if (!root) throw new Error('The page has no place with the id "root"');
createRoot(root).render(
  <StoreContext value={store}>
    <PartContext value={{ client, building }}>
      <App />
    </PartContext>
  </StoreContext>,
);
