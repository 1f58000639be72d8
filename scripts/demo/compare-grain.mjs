// Compares the phantom's grain with a real tooth's X-ray projections: `node scripts/demo/compare-grain.mjs [FOLDER]`.
import { runBundled } from "./run-bundled.mjs";

const { compareGrain } = await runBundled("scripts/demo/compare-grain.ts");
compareGrain(process.argv[2] ?? "../shared/data/tooth_tomography_bsd3");
