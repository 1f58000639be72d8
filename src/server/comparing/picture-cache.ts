import { mkdir, readdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { PictureName } from "./comparing.ts";

/** One picture of one ledger entry. */
export interface PictureOfEntry {
  readonly caseId: string;
  readonly entryId: string;
  readonly name: PictureName;
}

/** Pictures that were made of comparisons, kept so that they need not be made again; no part of the record. */
export interface PictureCache {
  readonly read: (picture: PictureOfEntry) => Promise<Uint8Array | undefined>;
  readonly keep: (picture: PictureOfEntry, png: Uint8Array) => Promise<void>;
  /** Takes away the pictures of all cases but these: of a case that was removed nothing stays. */
  readonly keepOnly: (caseIds: readonly string[]) => Promise<void>;
}

/** Rises whenever the same comparison gives other pictures; those of another form are not read. */
const form = 1;

/** Keeps pictures in the folder `cache/comparisons` of the home, by case. */
export function pictureCache(home: string): PictureCache {
  const folder = join(home, "cache", "comparisons");
  const fileOf = ({ caseId, entryId, name }: PictureOfEntry): string =>
    join(folder, caseId, `${entryId}.${name}.${form}.png`);
  return {
    // A picture that can't be read is made again.
    read: (picture) => readFile(fileOf(picture)).catch(() => undefined),
    keep: async (picture, png) => {
      const file = fileOf(picture);
      await mkdir(join(folder, picture.caseId), { recursive: true });
      await writeFile(`${file}.part`, png);
      await rename(`${file}.part`, file);
    },
    keepOnly: async (caseIds) => {
      const kept = new Set(caseIds);
      const there = await readdir(folder).catch((): string[] => []);
      for (const name of there) if (!kept.has(name)) await rm(join(folder, name), { recursive: true, force: true });
    },
  };
}
