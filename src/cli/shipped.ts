import { dirname } from "node:path";
import { fileURLToPath } from "node:url";

/** The folder with everything that ships beside the built program (dist/canalog.mjs): data, method pages, fonts. */
export const shipped = dirname(dirname(fileURLToPath(import.meta.url)));
