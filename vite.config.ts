import react from '@vitejs/plugin-react';
import { createLogger, defineConfig } from 'vite';
import { licences } from './scripts/licences.mjs';
import { isolationHeaders } from './scripts/serve.mjs';

const { page: licencesOfPage, worker: licencesOfWorkers } = licences();

// The kernels' loaders import Node's own modules behind a question whether they run in Node: that those are left
// out of the page is right, and no reason for six lines of warning at each start.
const logger = createLogger('warn');
const { warn } = logger;
logger.warn = (message, options) => {
  if (!/Module "node:\w+" has been externalized .*(replicad-opencascadejs|manifold-3d)/.test(message))
    warn(message, options);
};

export default defineConfig(({ command }) => ({
  // Relative, so that dist/ works in any folder of any web server.
  base: './',
  plugins: [react(), licencesOfPage],
  ...(command === 'build' && { customLogger: logger }),
  build: {
    target: 'es2023',
    // three and React come in one chunk of this order; the kernel is not among them.
    chunkSizeWarningLimit: 2000,
  },
  // es: the multi-thread kernel starts its threads as module workers.
  worker: { format: 'es', plugins: () => [licencesOfWorkers] },
  // Packages that find their .wasm beside themselves lose it when they are bundled for development.
  optimizeDeps: { exclude: ['replicad-opencascadejs', 'manifold-3d'] },
  server: { headers: isolationHeaders },
  preview: { headers: isolationHeaders },
}));
