import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The folder with everything that ships beside the program (data, method pages, fonts): the nearest one above with a package.json. */
export const shipped = above(dirname(fileURLToPath(import.meta.url)));

function above(folder: string): string {
  if (existsSync(join(folder, "package.json")) || dirname(folder) === folder) return folder;
  return above(dirname(folder));
}
