// `npm run build`: makes dist/ if the sources changed.
import { ensureBuilt } from "./built.mjs";
import { ensureInstalled } from "./installed.mjs";

ensureInstalled("run");
await ensureBuilt();
