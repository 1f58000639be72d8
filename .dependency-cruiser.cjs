/** The arrows between rooms (ARCHITECTURE.md). A room may import itself and what its line lists, nothing else of src/. */
const allowed = {
  core: [],
  record: ["core"],
  ledger: ["core", "record"],
  panel: ["core", "record", "ledger"],
  imaging: [],
  phantom: ["imaging"],
  figures: ["core"],
  pages: ["core", "record", "ledger", "panel", "figures"],
  export: ["core", "pages", "figures", "record", "imaging"],
  store: ["core", "record"],
  server: ["core", "record", "ledger", "panel", "imaging", "phantom", "figures", "pages", "export", "store"],
  web: ["core", "record", "ledger", "pages", "figures", "imaging"],
  cli: ["core", "record", "ledger", "panel", "imaging", "phantom", "figures", "pages", "export", "store", "server"],
};
/** The parts of core that are vocabulary and not computing; every room may use them. */
const vocabulary = "^src/core/(units|refusal|ids|basis)\\.ts$";

/** What goes over the local API; the web imports it as types alone. */
const apiTypes = "^src/server/api\\.ts$";

const arrows = Object.entries(allowed).map(([room, others]) => ({
  name: `arrows-of-${room}`,
  severity: "error",
  from: { path: `^src/${room}/` },
  to: {
    path: "^src/",
    pathNot: [`^src/(${[room, ...others].join("|")})/`, vocabulary, ...(room === "web" ? [apiTypes] : [])],
  },
}));

module.exports = {
  forbidden: [
    { name: "no-cycles", severity: "error", from: {}, to: { circular: true } },
    {
      name: "core-is-pure",
      severity: "error",
      from: { path: "^src/core/", pathNot: "\\.test\\.ts$" },
      to: { pathNot: ["^src/core/", "^data/", "node_modules/zod"] },
    },
    {
      name: "one-driver",
      severity: "error",
      from: { path: "^src/", pathNot: "^src/store/" },
      to: { path: "node_modules/(libsql|kysely)" },
    },
    {
      name: "web-never-computes",
      severity: "error",
      from: { path: "^src/web/" },
      to: {
        path: "^src/core/(topics|topic|tooth|radiograph|instrument|safety|diagnosis|healing|evidence|volume|statistics)(/|\\.ts)",
      },
    },
    {
      name: "one-caller-of-compute",
      severity: "error",
      from: { path: "^src/", pathNot: ["^src/(core|ledger|cli)/", "\\.test\\.tsx?$"] },
      to: { path: "^src/core/topics?\\.ts$" },
    },
    ...arrows,
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    doNotFollow: { path: "node_modules" },
    exclude: { path: "^dist/" },
    enhancedResolveOptions: { extensions: [".ts", ".tsx", ".mjs", ".js", ".json"] },
  },
};
