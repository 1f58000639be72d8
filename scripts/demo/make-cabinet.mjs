// Writes data/demo/cabinet.json: the invented cabinet of the demo, the same for the same sources.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "../root.mjs";
import { runBundled } from "./run-bundled.mjs";

const { demoCabinet } = await runBundled("scripts/demo/cabinet/demo-cabinet.ts");
writeFileSync(join(root, "data/demo/cabinet.json"), `${JSON.stringify(demoCabinet(), null, 1)}\n`);
