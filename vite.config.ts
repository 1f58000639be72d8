import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

/** The screens: built from src/web into dist/web, which the server serves under a strict content policy. */
export default defineConfig({
  root: "src/web",
  plugins: [react()],
  build: {
    outDir: "../../dist/web",
    emptyOutDir: true,
    target: "es2022",
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 400,
  },
  worker: { format: "es" },
  server: { fs: { allow: ["../.."] } },
});
