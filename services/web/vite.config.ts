import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/**
 * Builds the pages to dist/. Nothing is inlined as data: or as a script in the page, so that the
 * server's content security policy needs no exception.
 */
export default defineConfig({
  root: import.meta.dirname,
  plugins: [react()],
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    target: 'es2023',
    rolldownOptions: {
      // The schemas and data tables of our own packages have no effect but their exports: what
      // the pages do not name (zod, the element data, which come from the server) stays out.
      treeshake: { moduleSideEffects: (id) => !/[\\/]packages[\\/]|[\\/]node_modules[\\/]zod[\\/]/.test(id) },
    },
  },
});
