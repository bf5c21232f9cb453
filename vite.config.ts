import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { isolationHeaders } from './scripts/serve.mjs';

export default defineConfig({
  // Relative, so that dist/ works in any folder of any web server.
  base: './',
  plugins: [react()],
  build: {
    target: 'es2023',
    // Every package that ends up in the bundle, with its licence, beside the texts in public/licences.
    license: { fileName: 'licences/bundled.md' },
    // three and the app's own code come in one chunk of this order; the kernel is not among them.
    chunkSizeWarningLimit: 1500,
  },
  // es: the multi-thread kernel starts its thread workers as modules.
  worker: { format: 'es' },
  // Packages that find their .wasm beside themselves lose it when they are bundled for development.
  optimizeDeps: { exclude: ['replicad-opencascadejs', 'manifold-3d'] },
  server: { headers: isolationHeaders },
  preview: { headers: isolationHeaders },
});
